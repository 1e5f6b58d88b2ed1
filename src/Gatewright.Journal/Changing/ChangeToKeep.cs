using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Changing;

/// <summary>Turns a change that was worked out into the one that is put on record, and stands among the jobs.</summary>
public static class ChangeToKeep
{
    /// <summary>The change.</summary>
    /// <param name="job">The key it is to have.</param>
    /// <param name="club">The club: riggers and oars are known by their marks.</param>
    /// <param name="boat">The boat's key.</param>
    /// <param name="plan">The way from rig to rig.</param>
    /// <param name="say">The language it is planned in; its steps are put down in every other one too.</param>
    public static ChangePlanned Of(string job, Club club, string boat, ChangePlan plan, Wording say)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(say);
        return new(
            job,
            boat,
            plan.Target.Name,
            [.. plan.Steps.Select(step => Step(step, plan, club, say))],
            [.. plan.ReadAgain.Select(again => Again(again, plan))]);
    }

    private static PlannedStep Step(ChangeStep step, ChangePlan plan, Club club, Wording say)
    {
        bool isOff = step.IsMove && step.To is null;
        GatePlace[] gates = [.. plan.Target.Gates.Where(g => g.Seat == step.Place.Seat && (step.Place.Side is null || step.Place.Side == g.Side))];
        Side? side = step.Place.Side ?? (gates.Length == 1 ? gates[0].Side : null);
        bool refits = step.Phase <= ChangePhase.Insert && !isOff;
        RigMeasure? measure = step.Item?.Measure();
        bool isOar = step.Phase == ChangePhase.Oars;
        string? moved = step is { IsMove: true, Mark: { } mark } ? KeyOf(club, isOar ? Things.Oar : Things.Rigger, mark) : null;
        return new(
            say.Changes.Step(step),
            step.Place.Seat,
            [.. PartCount.Of(step.Parts).Select(c => new PartUsed(c.Part.Kind.Word(), (decimal)c.Part.Size, c.Count))],
            side,
            measure?.Word(),
            measure is null ? null : Math.Round((decimal)step.After!.Value.Value, 2),
            measure is null ? null : Math.Round((decimal)step.After!.Value.U, 2),
            step.Work is Work.FitInsert insert ? (decimal)insert.Degrees : null,
            isOar ? null : moved,
            isOar ? moved : null,
            isOff,
            refits && plan.Rig.Class.Rowing == Rowing.Sweep && gates.Any(g => !plan.Rig.Gates.Contains(g)),
            refits,
            Language.All.Where(l => l.Tag != say.Language.Tag).ToDictionary(l => l.Tag, l => Wording.In(l).Changes.Step(step)));
    }

    /// <summary>What is to be read, with the steps it follows. What nothing was aimed at is only read: the boat is judged by it.</summary>
    private static ReadAgainAt Again(ToRead again, ChangePlan plan)
    {
        RigAim? aim = plan.Target.Find(again.Item, again.Place, plan.Rig.Class.Rowing);
        return new(
            again.Item.Word(),
            again.Place.Seat,
            [.. plan.Steps.Select((step, i) => (step, i))
                .Where(s => s.step.ReadAgain.Contains(again.Item) && s.step.Place.Seat == again.Place.Seat
                    && (s.step.Place.Side is not { } side || again.Place.Side is not { } of || side == of))
                .Select(s => s.i)],
            again.Place.Side,
            Limit(aim?.Lowest),
            Limit(aim?.Highest));
    }

    private static decimal? Limit(double? limit) => limit is { } of && double.IsFinite(of) ? Math.Round((decimal)of, 2) : null;

    private static string? KeyOf(Club club, string thing, string mark)
    {
        foreach (Subject subject in club.Subjects.Where(s => s.Thing == thing).OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            if ((new ThingView(club, thing, subject.Key)["name"] ?? subject.Key) == mark)
            {
                return subject.Key;
            }
        }

        return null;
    }
}
