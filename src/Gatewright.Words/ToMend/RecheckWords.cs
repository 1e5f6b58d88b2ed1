using Gatewright.Core;
using Gatewright.Core.Mending;

namespace Gatewright.Words.ToMend;

/// <summary>What the readings after a mending found.</summary>
public sealed class RecheckWords
{
    private readonly Wording _say;

    internal RecheckWords(Wording say) => _say = say;

    /// <summary>"Seat 3 port reads as was expected after the work (chance that it is so: 97 %)."</summary>
    /// <param name="gate">The gate.</param>
    /// <param name="recheck">What was found.</param>
    /// <param name="isWorked">Whether all of the work is known to be done; where it is not, nothing is said of what it did.</param>
    public string Of(GatePlace gate, Recheck recheck, bool isWorked = true)
    {
        ArgumentNullException.ThrowIfNull(recheck);
        double probability = recheck.Outcome switch
        {
            RecheckOutcome.Mended => recheck.Mended,
            RecheckOutcome.NotMended => recheck.NotMended,
            _ => recheck.Otherwise,
        };
        return _say.Text(isWorked ? $"Recheck.{recheck.Outcome}" : $"Recheck.{recheck.Outcome}.Unworked", _say.Names.GateFirst(gate), _say.Figures.Percent(probability));
    }
}
