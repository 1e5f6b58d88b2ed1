using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending;

/// <summary>What a shim or washer does: tilt = atan(t / L).</summary>
/// <remarks>The sine bar's relation with the base in place of the hypotenuse: 1 mm over 57.3 mm → 1.000°.</remarks>
public static class Shim
{
    /// <summary>The tilt that a thickness gives over a base.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The base is not above 0.</exception>
    public static Angle Tilt(double thicknessMm, double baseMm) =>
        Angle.FromRadians(Math.Atan(thicknessMm / Positive(baseMm)));

    /// <summary>The thickness that gives a tilt over a base; negative for a negative tilt.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The base is not above 0.</exception>
    public static double ThicknessMm(Angle tilt, double baseMm) => Positive(baseMm) * Math.Tan(tilt.Radians);

    private static double Positive(double baseMm) => baseMm > 0
        ? baseMm
        : throw new ArgumentOutOfRangeException(nameof(baseMm), baseMm, "A shim's base must be above 0 mm.");
}
