namespace Gatewright.Core.Rig;

/// <summary>What a measure of the rig should be, and how far off it may lie. Figures are in the measure's own unit.</summary>
/// <param name="Measure">Which.</param>
/// <param name="Aspect">What of it.</param>
/// <param name="Value">The value to set; of <see cref="RigAspect.Seats"/> 0.</param>
/// <param name="Tolerance">How far off it is still good, 0 or more; on it is inside.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Seat">The seat it is of; null for every seat.</param>
/// <param name="Side">The side it is of; null for both.</param>
public sealed record RigTarget(
    RigMeasure Measure, RigAspect Aspect, double Value, double Tolerance, RigSource Source, int? Seat = null, Side? Side = null)
{
    /// <summary>How far off it is still good, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 0, or no number.</exception>
    public double Tolerance { get; init => field = NotNegative(value); } = NotNegative(Tolerance);

    /// <summary>The lowest good figure.</summary>
    public double Lowest => Value - Tolerance;

    /// <summary>The highest good figure.</summary>
    public double Highest => Value + Tolerance;

    /// <summary>Whether it is of the very same: measure, aspect, seat and side.</summary>
    public bool IsOfTheSame(RigTarget other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Measure == other.Measure && Aspect == other.Aspect && Seat == other.Seat && Side == other.Side;
    }

    private static double NotNegative(double tolerance) => tolerance >= 0 && double.IsFinite(tolerance)
        ? tolerance
        : throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "A tolerance must be 0 or more.");
}
