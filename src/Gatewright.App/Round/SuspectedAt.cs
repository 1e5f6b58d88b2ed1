using Gatewright.Core.Checking;
using Gatewright.Words;
using Gatewright.Words.Suspected;

namespace Gatewright.App.Round;

/// <summary>What is probably wrong at a place.</summary>
/// <param name="Place">The gate, or the whole boat.</param>
/// <param name="Likely">The causes, most probable first.</param>
internal sealed record SuspectedAt(string Place, IReadOnlyList<Likely> Likely)
{
    /// <summary>The places of which a cause is told: the whole boat first. Asks for the diagnosis.</summary>
    public static IReadOnlyList<SuspectedAt> Of(BoatCheck check, Wording say) =>
    [
        .. new SuspectedAt[] { new(Sentence.Capital(say.Names.WholeBoat), [.. say.Shared.Of(check)]) }.Where(s => s.Likely.Count > 0),
        .. CauseChoice.Gates(check).Select(g => new SuspectedAt(say.Names.GateFirst(g.Gate), [.. say.Causes.Of(g)])),
    ];
}
