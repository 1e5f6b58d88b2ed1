namespace Gatewright.Core.Rig;

/// <summary>A measure of the rig as it was taken.</summary>
/// <param name="Measure">Which.</param>
/// <param name="Place">Where.</param>
/// <param name="Value">The figure in the measure's own unit: centimetres, of an angle degrees.</param>
/// <param name="Day">The day; what is taken of a boat on one day shares its tape, its bar and its level. Those without a day are of one.</param>
/// <param name="SetU">
/// Of what was set to a figure and not taken since, the standard uncertainty with which a setting hits; null for what was taken.
/// </param>
public readonly record struct RigReading(RigMeasure Measure, RigPlace Place, double Value, DateOnly? Day = null, double? SetU = null)
{
    /// <summary>The figure, finite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is NaN or infinite.</exception>
    public double Value { get; init => field = Finite(value); } = Finite(Value);

    private static double Finite(double value) => double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A measure must be a finite number.");
}
