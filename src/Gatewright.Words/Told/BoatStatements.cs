using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Words.Suspected;
using Gatewright.Words.ToMend;
using Gatewright.Words.ToRead;

namespace Gatewright.Words.Told;

/// <summary>One boat in words alone, a statement at a time; short where nothing is wrong.</summary>
internal sealed class BoatStatements(Wording say, Telling telling)
{
    public IEnumerable<string> Of(BoatCheck check)
    {
        BoatVerdict boat = check.Verdict;
        IEnumerable<string> told = Head(check).Concat(Gates(boat)).Concat(Beside(check));
        if (boat.Verdict != Verdict.Good)
        {
            told = told.Concat(WhatIsIt(boat)).Concat(Why(check)).Concat(ToDo(check)).Concat(Caution(boat));
        }

        return telling.Explain ? told.Concat(say.Budgets.Sentences(check)) : told;
    }

    private IEnumerable<string> Head(BoatCheck check)
    {
        BoatVerdict boat = check.Verdict;
        yield return say.Text(
            "Boat.Head", boat.Boat, boat.Class.Name, boat.Gates.Count == 0 ? say.Boats.NoGate : say.Names.Verdict(boat.Verdict));
        yield return say.Text("Boat.Read", say.Levels.HowRead(check));
    }

    private IEnumerable<string> Gates(BoatVerdict boat) =>
        boat.Verdict == Verdict.Good && !telling.All && boat.Gates.Count > 0
            ? [say.Text("Boat.AllGood", say.Spreads.Of(boat))]
            : boat.Gates.Select(gate => say.Text(
                "Boat.Gate", say.Names.GateFirst(gate.Gate), say.Names.Verdict(gate.Verdict), Pitches(gate)));

    private IEnumerable<string> Beside(BoatCheck check)
    {
        if (check.Verdict.NotRead.Count > 0)
        {
            yield return say.Text("Boat.NotRead", say.Names.Gates(check.Verdict.NotRead));
        }

        foreach (string notice in say.Boats.Notices(check))
        {
            yield return say.Text("Boat.Notice", notice);
        }
    }

    /// <summary>Without the unit, which is said once: a listener hears eight gates of this.</summary>
    private string Pitches(GateVerdict gate) => string.Join(", ", gate.Pitches.Select(pitch => say.Text(
        pitch.Read ? "Pitch.At" : "Pitch.NotRead", say.Names.Point(pitch.At), say.Figures.Bare(pitch.Pitch))));

    private IEnumerable<string> WhatIsIt(BoatVerdict boat)
    {
        yield return say.Text("Boat.WhatIsIt");
        foreach (GateVerdict gate in boat.Gates.OrderByDescending(gate => gate.Verdict))
        {
            foreach (Reason reason in Judged.ReasonChoice.Of(gate, telling.All))
            {
                yield return say.Text(
                    "Boat.Reason",
                    Sentence.Capital(say.Names.Verdict(reason.Verdict)),
                    say.Reasons.Of(gate.Gate, reason, boat.Standard));
            }

            if (say.Reasons.LeftOut(gate, telling.All) is { } more)
            {
                yield return say.Text("Boat.Reason", say.Names.GateFirst(gate.Gate), LeftOut(more));
            }
        }
    }

    private string LeftOut(string more) => telling.HowToTellAll is { } how
        ? say.Text("Boat.FurtherHow", more, how)
        : say.Text("Boat.Further", more);

    private IEnumerable<string> Why(BoatCheck check)
    {
        yield return say.Text("Boat.Why");
        foreach (string likely in Likely(Sentence.Capital(say.Names.WholeBoat), say.Shared.Of(check)))
        {
            yield return likely;
        }

        if (say.Shared.HowItLay(check) is { } lay)
        {
            yield return lay;
        }

        foreach (GateDiagnosis gate in CauseChoice.Gates(check))
        {
            string place = say.Names.GateFirst(gate.Gate);
            foreach (string likely in Likely(place, say.Causes.Of(gate)))
            {
                yield return likely;
            }

            yield return say.Text("Boat.Reason", place, say.Causes.ProbablyIs(gate));
        }

        foreach (string twins in say.Causes.Twins(check))
        {
            yield return twins;
        }
    }

    private IEnumerable<string> Likely(string place, IEnumerable<Likely> causes)
    {
        string likely = string.Join(
            "; ", causes.Select(cause => say.Text("Boat.LikelyCause", cause.Words, say.Figures.Percent(cause.Probability))));
        return likely.Length == 0 ? [] : [say.Text("Boat.Likely", place, likely)];
    }

    private IEnumerable<string> ToDo(BoatCheck check)
    {
        yield return say.Text("Boat.ToDo");
        if (say.Next.Told(check) is { } told)
        {
            yield return say.Text("Boat.Next", told);
        }

        foreach (string next in Next(NextWords.For(check)))
        {
            yield return next;
        }

        List<(string Place, Remedy Remedy)> remedies =
        [
            .. RemedyChoice.OfBoat(check).Select(remedy => (Sentence.Capital(say.Names.WholeBoat), remedy)),
            .. from gate in RemedyChoice.Gates(check)
               from remedy in RemedyChoice.OfGate(check, gate, telling.All)
               select (say.Names.GateFirst(gate), remedy),
        ];
        foreach ((string place, Remedy remedy) in remedies)
        {
            yield return say.Remedies.Whole(place, remedy);
        }

        if (say.Cautions.Mind(remedies.SelectMany(told => told.Remedy.Cautions)) is { Length: > 0 } mind)
        {
            yield return say.Text("Boat.Mind", mind);
        }
    }

    private IEnumerable<string> Next(Advice advice) => advice.Next is { } next
        ? say.Next.If(next).Prepend(say.Text("Boat.Next", say.Next.What(next)))
        : [say.Text("Boat.Next", say.Next.Enough(advice))];

    private IEnumerable<string> Caution(BoatVerdict boat) =>
        say.Cautions.For(boat) is { } caution ? [say.Text("Boat.Caution", caution)] : [];
}
