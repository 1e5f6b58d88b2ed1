using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Words.Suspected;
using Gatewright.Words.ToRead;

namespace Gatewright.Words.Told;

/// <summary>A boat in a few sentences: how it stands, why, what is most likely wrong, what comes next.</summary>
public sealed class TaleWords
{
    private readonly Wording _say;

    internal TaleWords(Wording say) => _say = say;

    /// <summary>One sentence to five: the verdict; of a boat that is not good its first reason, what is most likely wrong, and the next reading.</summary>
    public IReadOnlyList<string> Of(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        BoatVerdict boat = check.Verdict;
        List<string> tale = [Stands(boat)];
        if (boat.Verdict != Verdict.Good)
        {
            GateVerdict worst = boat.Gates.MaxBy(gate => gate.Verdict)!;
            tale.Add(_say.Reasons.Why(worst, boat.Standard)!);
            tale.Add(_say.Shared.HowItLay(check) ?? Cause(check, worst));
            Core.Advising.Advice advice = NextWords.For(check);
            tale.Add(advice.Next is { } next ? _say.Next.Brief(next) : _say.Next.Enough(advice));
        }

        if (boat.NotRead.Count > 0)
        {
            tale.Add(_say.Text("Tale.NotRead", _say.Names.Gates(boat.NotRead)));
        }

        return tale;
    }

    private string Stands(BoatVerdict boat)
    {
        string name = _say.Text("Shed.Boat", boat.Boat, boat.Class.Name);
        int wrong = boat.Gates.Count(gate => gate.Verdict != Verdict.Good);
        return boat.Gates.Count == 0 ? _say.Text("Tale.NoGate", name)
            : wrong == 0 ? _say.Counted("Tale.Good", boat.Gates.Count, name)
            : _say.Counted("Tale.NotGood", wrong, name, _say.Names.Verdict(boat.Verdict));
    }

    private string Cause(BoatCheck check, GateVerdict gate)
    {
        GateDiagnosis diagnosis = check.Diagnosis.Gates.First(g => g.Gate == gate.Gate);
        Likely likeliest = _say.Causes.Of(diagnosis).First();
        return _say.Text("Tale.Cause", _say.Names.Gate(gate.Gate), likeliest.Words, _say.Figures.Percent(likeliest.Probability));
    }
}
