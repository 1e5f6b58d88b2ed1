using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Advising;

/// <summary>What one further reading is expected to tell.</summary>
/// <remarks>The bits are never negative but for the error of the quadrature, some thousandths.</remarks>
/// <param name="Choice">The reading.</param>
/// <param name="CauseBits">
/// The expected drop in entropy over what is wrong: at the gate and with what the boat shares; of level and gauge, as
/// the gate sees it that learns most.
/// </param>
/// <param name="VerdictBits">The expected drop in entropy over the verdicts it bears on.</param>
/// <param name="Seconds">How long it takes.</param>
public sealed record NextReading(ReadingChoice Choice, double CauseBits, double VerdictBits, double Seconds)
{
    /// <summary>All it is expected to tell, in bits.</summary>
    public double Bits => CauseBits + VerdictBits;

    /// <summary>What it is chosen by.</summary>
    public double BitsPerSecond => Bits / Seconds;

    /// <summary>What each outcome would mean, from the lowest; worked out for the reading that is advised alone.</summary>
    public IReadOnlyList<ReadingOutcome> Outcomes { get; init; } = [];

    /// <summary>What the outcomes are values of.</summary>
    public OutcomeScale Scale { get; init; }
}

/// <summary>What an outcome is a value of.</summary>
public enum OutcomeScale
{
    /// <summary>What the gauge shows.</summary>
    Reading,

    /// <summary>How high the bow lies.</summary>
    BowHigh,

    /// <summary>How low port lies.</summary>
    PortLow,

    /// <summary>The zero that a reversal finds.</summary>
    GaugeZero,
}

/// <summary>Scales and their codes.</summary>
public static class OutcomeScales
{
    /// <summary>The code used in files: "bow-high".</summary>
    public static string Code(this OutcomeScale scale) => scale switch
    {
        OutcomeScale.BowHigh => "bow-high",
        OutcomeScale.PortLow => "port-low",
        OutcomeScale.GaugeZero => "gauge-zero",
        _ => "reading",
    };
}

/// <summary>A band of outcomes of a reading that point to one account of the gate.</summary>
/// <param name="From">Where the band begins, as the band before it ends; null when it is open below.</param>
/// <param name="To">Where it ends; null when it is open above.</param>
/// <param name="Chance">How likely the reading is to fall here.</param>
/// <param name="Story">
/// What would then lead, at this gate and of what the boat shares, with the probability it would have on average.
/// </param>
public sealed record ReadingOutcome(Angle? From, Angle? To, double Chance, Story Story);
