using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Changing;

/// <summary>
/// What goes on record when somebody says that a step of a change is done: that it is, where the riggers and oars are, what was set to
/// which figure, what it took from the shelf, and that readings of a gate from before no longer speak of it. None of it is a measure: nobody took one.
/// </summary>
public static class DoneSteps
{
    /// <summary>The facts of a step that was done.</summary>
    /// <param name="club">The club.</param>
    /// <param name="plan">The change it is of.</param>
    /// <param name="step">Which step, from 0.</param>
    /// <remarks>From the shelf goes what lies there: a part that came from elsewhere makes no count go below nothing.</remarks>
    public static IReadOnlyList<Fact> Facts(Club club, ChangePlanned plan, int step)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(plan);
        PlannedStep done = plan.Steps[step];
        return
        [
            new StepDone(plan.Job, step),
            .. Made(plan.Boat, done),
            .. JobPart.Of(club, done.Parts).Where(p => p.OnShelf > 0)
                .Select(p => new StockChanged(p.Used.Part, p.Used.Size, -Math.Min(p.Used.Count, p.OnShelf), plan.Job)),
        ];
    }

    /// <summary>The entries that stand for a step that was done after all not: those by which it, and what it made, went on record.</summary>
    public static IReadOnlyList<Recorded> Records(Club club, RigChange change, int step)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(change);
        List<Recorded> records = [.. change.StepRecords(step)];
        if (records.Count == 0)
        {
            return records;
        }

        Recorded first = records[0];
        PlannedStep done = change.Plan.Steps[step];
        IEnumerable<Fact> parts = done.Parts.Select(p => new StockChanged(p.Part, p.Size, 0, change.Plan.Job));
        foreach (Fact made in Made(change.Plan.Boat, done).Concat(parts))
        {
            if (club.About(Subject.Of(made)).LastOrDefault(r => IsSame(r.Fact, made) && r.Entry.Member == first.Entry.Member
                && RecordedOrder.Instance.Compare(r, first) > 0) is { } record)
            {
                records.Add(record);
            }
        }

        return records;
    }

    /// <summary>What a step made of the boat.</summary>
    private static IEnumerable<Fact> Made(string boat, PlannedStep step)
    {
        if (step is { Measure: { } word, Value: { } value, U: { } u } && RigMeasures.OfWord(word) is { } measure)
        {
            yield return new MeasureSet(boat, word, step.Seat, value, measure.Unit().Word(), u, measure.HasSide() ? step.Side : null);
        }

        if (step is { Insert: { } stamp, Side: { } at })
        {
            yield return Set(Things.Gate, Things.GateKey(boat, new(step.Seat, at)), ("insert", stamp.ToString(CultureInfo.InvariantCulture)));
        }

        if ((step.Rigger ?? step.Oar) is { } moved)
        {
            string thing = step.Rigger is null ? Things.Oar : Things.Rigger;
            yield return step.LaidBy
                ? Set(thing, moved, ("seat", null), ("side", null))
                : Set(thing, moved, ("boat", boat), ("seat", step.Seat.ToString(CultureInfo.InvariantCulture)), ("side", step.Side?.Word()));
        }

        if (step is { TurnsSide: true, Side: { } turned })
        {
            yield return Set(Things.Seat, Things.SeatKey(boat, step.Seat), ("side", turned.Word()));
        }

        foreach (Side side in step.Refits ? step.Side is { } one ? [one] : new[] { Side.Port, Side.Starboard } : [])
        {
            yield return new Reported(boat, ReportKind.Refitted, step.Seat, side);
        }
    }

    /// <summary>Whether a record says what a step made. Of parts it took as many as there were then.</summary>
    private static bool IsSame(Fact recorded, Fact made) => (recorded, made) switch
    {
        (StockChanged { Change: < 0 } one, StockChanged other) => one.Job == other.Job && one.Part == other.Part && one.Size == other.Size,
        (StockChanged, _) => false,
        _ => recorded.GetType() == made.GetType() && FactKinds.Write(recorded).Body.AsSpan().SequenceEqual(FactKinds.Write(made).Body),
    };

    private static ThingSet Set(string thing, string key, params (string Field, string? Value)[] fields) =>
        new(thing, key, fields.ToDictionary(f => f.Field, f => f.Value));
}
