using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Jobs;
using Gatewright.App.Keeping.People;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Reporting;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.App.Boat;

/// <summary>What stands in the journal of a boat, in a line; and who said so.</summary>
public sealed class RecordWords(Texts<BoatTexts> texts, ClubInHand inHand, MemberNames names)
{
    private static readonly HashSet<string> Named =
        ["name", "class", "rack", "lie", "standard", "out-of-use", "code", "side", "insert", "target-aft", "target-out", "rigger", "bed", "order"];

    /// <summary>
    /// Whoever recorded an entry, as far as this device has heard: names live in accounts, and no entry holds one. A crew is
    /// told as such by everybody; what its link is called, keepers alone have heard.
    /// </summary>
    public string Who(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.Member == inHand.Held.Member ? texts["You"] : names.Of(entry.Member) switch
        {
            null or "" when CrewTold.Is(entry) => texts["CrewByLink"],
            null => texts["Member"],
            "" => texts["FormerMember"],
            { } name => name,
        };
    }

    /// <summary>What an entry says.</summary>
    public string What(Recorded record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Fact switch
        {
            Reported told => Told(told),
            Held held => texts["DidHold", held.In(Said.Words.Language)],
            Released released => texts["DidRelease", released.Reason],
            JobPlanned job => texts["DidPlan", Said.Words.Causes.Some(Part(job))],
            JobDone { Found: not null } done => texts["DidMend", JobFigures.Found(done.All)!],
            JobDone => texts["DidEnd"],
            JobDropped dropped => dropped.Reason is { } why ? texts["DidDropWhy", why] : texts["DidDrop"],
            GateMended mended => texts["DidMendGate", Said.Words.Names.Gate(new GatePlace(mended.Seat, mended.Side))],
            Noted note => texts["DidNote", Damage.In(note, Said.Words)],
            PhotoTaken => texts["DidPhoto"],
            RackLevelRead level => texts["DidLevel", level.Rack, Figures.Degrees(level.BowHigh), Figures.Degrees(level.PortLow)],
            GaugeReversed reversed => texts["DidReverse", reversed.Gauge],
            StepDone step => texts["DidStep", step.Step + 1],
            MeasureTaken measure => texts["DidMeasure", measure.Measure, measure.Seat, measure.Value, measure.Unit],
            MeasureSet set => texts["DidSet", set.Measure, set.Seat, set.Value, set.Unit],
            ChangePlanned change => texts["DidPlanChange", change.Rig],
            _ => record.Entry.Kind,
        };
    }

    /// <summary>A field that has another value than before.</summary>
    public string What(FieldChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        string field = Named.Contains(change.Field) ? texts[$"Field.{change.Field}"] : change.Field;
        string place = change.Thing is Things.Seat or Things.Gate ? $"{change.Key[(change.Key.IndexOf('/', StringComparison.Ordinal) + 1)..]}: {field}" : field;
        return (change.From, change.To?.Value) switch
        {
            (null, { } to) => texts["FieldSet", place, to],
            ({ } from, null) => texts["FieldGone", place, from],
            ({ } from, { } to) => texts["FieldChange", place, from, to],
            _ => place,
        };
    }

    private static CausePart Part(JobPlanned job) =>
        new(job.Cause, job is { Seat: { } seat, Side: { } side } ? new GatePlace(seat, side) : null);

    /// <summary>What was told and where, a report or damage, without the words of whoever told it.</summary>
    public static string Briefly(Recorded told)
    {
        ArgumentNullException.ThrowIfNull(told);
        return told.Fact switch
        {
            Reported report => Briefly(report),
            Noted note => Damage.Briefly(note, Said.Words),
            _ => string.Empty,
        };
    }

    private static string Briefly(Reported told)
    {
        return Said.Words.Names.Report(new Report(
            told.Kind,
            told is { Seat: { } seat, Side: { } side } ? new GatePlace(seat, side) : null,
            told.Kind == ReportKind.DownToOneSide ? told.Side : null,
            told.Date));
    }

    private string Told(Reported told)
    {
        string what = Sentence.Capital(Briefly(told));
        return told.Text is { Length: > 0 } words ? texts["DidTell", what, words] : what;
    }
}
