using Gatewright.Core;
using Gatewright.Core.Mending;

namespace Gatewright.Words.ToMend;

/// <summary>What the readings after a mending found.</summary>
public sealed class RecheckWords
{
    private readonly Wording _say;

    internal RecheckWords(Wording say) => _say = say;

    /// <summary>"Seat 3 port reads as was expected after the work (chance that it is so: 97 %)."</summary>
    public string Of(GatePlace gate, Recheck recheck)
    {
        ArgumentNullException.ThrowIfNull(recheck);
        double probability = recheck.Outcome switch
        {
            RecheckOutcome.Mended => recheck.Mended,
            RecheckOutcome.NotMended => recheck.NotMended,
            _ => recheck.Otherwise,
        };
        return _say.Text($"Recheck.{recheck.Outcome}", _say.Names.GateFirst(gate), _say.Figures.Percent(probability));
    }
}
