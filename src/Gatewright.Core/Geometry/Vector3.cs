using System.Globalization;

namespace Gatewright.Core.Geometry;

/// <summary>
/// A vector in the hull's frame, right-handed: x to the bow, y to port, z up (from the keel to the gunwale).
/// </summary>
/// <remarks>Double precision: System.Numerics' vector is single, which is 0.00001° too coarse for the inverse.</remarks>
/// <param name="X">To the bow.</param>
/// <param name="Y">To port.</param>
/// <param name="Z">Up.</param>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>Straight up in the hull's frame, ẑ.</summary>
    public static Vector3 Up => new(0, 0, 1);

    /// <summary>The scalar product.</summary>
    public double Dot(Vector3 other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>The vector product, right-handed.</summary>
    public Vector3 Cross(Vector3 other) => new(
        (Y * other.Z) - (Z * other.Y),
        (Z * other.X) - (X * other.Z),
        (X * other.Y) - (Y * other.X));

    /// <summary>The length.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The vector of length 1 in the same direction; of the zero vector, NaN in every part.</summary>
    public Vector3 Direction => 1 / Length * this;

    /// <summary>"(1, -0.5, 0)" in the invariant culture. The one a record writes for itself would ask for the direction's direction for ever.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X}, {Y}, {Z})");

    /// <summary>The sum.</summary>
    public static Vector3 operator +(Vector3 left, Vector3 right) =>
        new(left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    /// <summary>A multiple.</summary>
    public static Vector3 operator *(double factor, Vector3 vector) =>
        new(factor * vector.X, factor * vector.Y, factor * vector.Z);
}
