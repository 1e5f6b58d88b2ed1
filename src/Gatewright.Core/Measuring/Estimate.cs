using System.Globalization;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>An angle as it is known: its value and its standard uncertainty.</summary>
/// <remarks>
/// The uncertainty is one standard deviation (JCGM 100:2008, 2.3.1), never an expanded one; on screen it stands
/// behind ±.
/// </remarks>
/// <param name="Value">The best value.</param>
/// <param name="U">The standard uncertainty, 0 or more.</param>
public readonly record struct Estimate(Angle Value, Angle U)
{
    /// <summary>The standard uncertainty, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 0.</exception>
    public Angle U { get; init => field = NotNegative(value); } = NotNegative(U);

    /// <summary>An estimate in degrees.</summary>
    public static Estimate FromDegrees(double value, double u) => new(Angle.FromDegrees(value), Angle.FromDegrees(u));

    /// <summary>"3.0° ± 0.34" in the invariant culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Value.Degrees:0.0##}° ± {U.Degrees:0.0#}");

    private static Angle NotNegative(Angle u) => u >= Angle.Zero
        ? u
        : throw new ArgumentOutOfRangeException(nameof(u), u.Degrees, "A standard uncertainty must be 0 or more.");
}
