namespace Gatewright.Core.Geometry;

/// <summary>A rotation about an axis through the origin, in Rodrigues' form.</summary>
/// <remarks>
/// Rodrigues' formula: v′ = v cos φ + k × v + k (k·v) / (1 + cos φ), with k the axis times sin φ. Kept as k and
/// cos φ − 1, because the smallest rotation between two directions is then a vector and a scalar product, without any
/// angle being taken, and because the default is then no rotation. Not for half turns (φ = 180°), where k vanishes
/// and the axis is lost. Lengths are kept to a part in 1e13 up to a turn of 170°; beyond, 1 + cos φ loses digits.
/// </remarks>
public readonly struct Rotation
{
    private readonly Vector3 _axisTimesSine;
    private readonly double _cosineLessOne;

    private Rotation(Vector3 axisTimesSine, double cosine) =>
        (_axisTimesSine, _cosineLessOne) = (axisTimesSine, cosine - 1);

    /// <summary>The rotation about a vector's direction by its length in radians, right-handed.</summary>
    /// <remarks>The form in which rotations are published: by it the formula is held to published tables.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The turn is not less than half a turn.</exception>
    public static Rotation FromVector(Vector3 vector)
    {
        double radians = vector.Length;
        if (!(radians < Math.PI))
        {
            throw new ArgumentOutOfRangeException(nameof(vector), radians, "A rotation must be less than half a turn.");
        }

        // sin φ / φ tends to 1: a vector too short to have a direction is no rotation at all.
        double sinc = radians < 1e-9 ? 1 : Math.Sin(radians) / radians;
        return new(sinc * vector, Math.Cos(radians));
    }

    /// <summary>The smallest rotation that takes "up" to a given direction.</summary>
    /// <param name="direction">Any length but zero; its z must be positive.</param>
    internal static Rotation FromUpTo(Vector3 direction)
    {
        Vector3 unit = direction.Direction;
        return new(Vector3.Up.Cross(unit), unit.Z);
    }

    /// <summary>The vector turned.</summary>
    public Vector3 Apply(Vector3 vector) =>
        ((1 + _cosineLessOne) * vector)
        + _axisTimesSine.Cross(vector)
        + (_axisTimesSine.Dot(vector) / (2 + _cosineLessOne) * _axisTimesSine);
}
