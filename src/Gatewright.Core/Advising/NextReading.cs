using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Advising;

/// <summary>What one further reading is expected to tell.</summary>
/// <param name="Choice">The reading.</param>
/// <param name="CauseBits">The expected drop in entropy over what is wrong, in bits.</param>
/// <param name="VerdictBits">The expected drop in entropy over the verdicts it bears on, in bits.</param>
/// <param name="Seconds">How long it takes.</param>
/// <param name="Outcomes">
/// What each outcome would mean, from the lowest; of a level, along the direction that tells more. Worked out for the
/// reading that is advised, empty for the others.
/// </param>
public sealed record NextReading(
    ReadingChoice Choice, double CauseBits, double VerdictBits, double Seconds, IReadOnlyList<ReadingOutcome> Outcomes)
{
    /// <summary>All it is expected to tell, in bits.</summary>
    public double Bits => CauseBits + VerdictBits;

    /// <summary>What it is chosen by.</summary>
    public double BitsPerSecond => Bits / Seconds;
}

/// <summary>A band of outcomes of a reading that point to one story.</summary>
/// <param name="From">The lowest value of the band; null when it is open below.</param>
/// <param name="To">The highest value; null when it is open above.</param>
/// <param name="Chance">How likely the reading is to fall here.</param>
/// <param name="Story">The story that would then lead, with the probability it would have in the band's middle.</param>
public sealed record ReadingOutcome(Angle? From, Angle? To, double Chance, Story Story);
