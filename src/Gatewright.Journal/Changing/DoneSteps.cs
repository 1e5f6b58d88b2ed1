using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Changing;

/// <summary>
/// What goes on record when somebody says that steps of a change are done: where the riggers and oars are, what was set to which figure,
/// and that readings of a gate from before no longer speak of it.
/// </summary>
public static class DoneSteps
{
    /// <summary>The facts of some steps that were done on a boat.</summary>
    /// <param name="club">The club.</param>
    /// <param name="boat">The boat's key.</param>
    /// <param name="plan">The plan they are of.</param>
    /// <param name="steps">The steps done.</param>
    public static IReadOnlyList<Fact> Facts(Club club, string boat, ChangePlan plan, IReadOnlyList<ChangeStep> steps)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(steps);
        var facts = new List<Fact>();
        var changed = new SortedSet<GatePlace>();
        foreach (ChangeStep step in steps)
        {
            if (step.IsMove)
            {
                facts.AddRange(Moved(club, boat, step));
            }
            else if (step.Item is { } item && item.Measure() is { } measure && step.After is { } after)
            {
                decimal value = Math.Round((decimal)after.Value, 2);
                facts.Add(new MeasureTaken(boat, measure.Word(), step.Place.Seat, value, measure.Unit().Word(), measure.HasSide() ? step.Place.Side : null));
            }
            else if (step is { Work: Work.FitInsert insert, Place.Side: { } side })
            {
                facts.Add(Set(Things.Gate, Gate(boat, new(step.Place.Seat, side)), ("insert", insert.Degrees.ToString(CultureInfo.InvariantCulture))));
            }

            if (step.Phase <= ChangePhase.Insert && !(step.IsMove && step.To is null))
            {
                changed.UnionWith(plan.Target.Gates.Where(g => g.Seat == step.Place.Seat && (step.Place.Side is null || step.Place.Side == g.Side)));
            }
        }

        // A sweep seat that is rigged on the other side is told so.
        foreach (GatePlace gate in changed.Where(g => plan.Rig.Class.Rowing == Rowing.Sweep && !plan.Rig.Gates.Contains(g)))
        {
            facts.Add(Set(Things.Seat, FormattableString.Invariant($"{boat}/{gate.Seat}"), ("side", gate.Side.Word())));
        }

        facts.AddRange(changed.Select(g => new Reported(boat, ReportKind.Refitted, g.Seat, g.Side)));
        return facts;
    }

    private static IEnumerable<Fact> Moved(Club club, string boat, ChangeStep step)
    {
        string thing = step.Phase == ChangePhase.Oars ? Things.Oar : Things.Rigger;
        if (step.Mark is { } mark && KeyOf(club, thing, mark) is { } key)
        {
            yield return step.To is { } to
                ? Set(thing, key, ("boat", boat), ("seat", to.Seat.ToString(CultureInfo.InvariantCulture)), ("side", to.Side.Word()))
                : Set(thing, key, ("seat", null), ("side", null));
        }
    }

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

    private static string Gate(string boat, GatePlace gate) => FormattableString.Invariant($"{boat}/{gate.Seat}/{gate.Side.Word()}");

    private static ThingSet Set(string thing, string key, params (string Field, string? Value)[] fields) =>
        new(thing, key, fields.ToDictionary(f => f.Field, f => f.Value));
}
