namespace Gatewright.Core.Measuring;

/// <summary>
/// What a reversal check of a gauge is worth: how sure one reading of a gate abeam is with it and without, on a boat whose
/// level is known.
/// </summary>
/// <param name="Unchecked">Its uncertainty, part by part, while the zero is taken to be 0.</param>
/// <param name="Checked">The same with a zero that a reversal found.</param>
public readonly record struct ReversalWorth(UncertaintyBudget Unchecked, UncertaintyBudget Checked)
{
    /// <summary>The worth for a gauge.</summary>
    /// <remarks>
    /// With the default settings, all in degrees: 0.5/√12, 0.2 and 0.0087 of the held angle are the noise; with 0.2 for
    /// the zero u is 0.318, with 0.05 it is 0.252.
    /// </remarks>
    public static ReversalWorth Of(Gauge gauge, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        UncertaintyBudget noise = ReadingNoise.Of(gauge, ReadItem.Gate, Station.Abeam, settings);
        return new(
            noise with { GaugeZero = settings.GaugeZeroU.Degrees },
            noise with { GaugeZero = settings.CheckedGaugeZeroU.Degrees });
    }
}
