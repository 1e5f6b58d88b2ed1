using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Jobs;

/// <summary>A station after a mending: what was expected, and what was read.</summary>
/// <param name="Expected">What was expected, in degrees.</param>
/// <param name="Read">What was read, corrected for level and gauge; null while it is not.</param>
public sealed record RecheckedStation(ExpectedAt Expected, Estimate? Read)
{
    /// <summary>Whether what was read, to the tenth that is shown, lies in the band; null while nothing is read.</summary>
    public bool? IsInside => Read is { } read
        ? Math.Round((decimal)read.Value.Degrees, 1, MidpointRounding.AwayFromZero) is var shown && shown >= Expected.From && shown <= Expected.To
        : null;
}
