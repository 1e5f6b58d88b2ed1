using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.SharingPages;

/// <summary>An entry in a few words: what it is, and what it is about.</summary>
public static class EntryWords
{
    /// <summary>The name of the text for a kind of fact.</summary>
    public static string Kind(Fact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return fact switch
        {
            ThingSet => nameof(ThingSet),
            Retracted => nameof(Retracted),
            RoundStarted => nameof(RoundStarted),
            RoundEnded => nameof(RoundEnded),
            BoatLaid => nameof(BoatLaid),
            ReadingTaken => nameof(ReadingTaken),
            ReadingKept => nameof(ReadingKept),
            RackLevelRead => nameof(RackLevelRead),
            GaugeReversed => nameof(GaugeReversed),
            Reported => nameof(Reported),
            Held => nameof(Held),
            Released => nameof(Released),
            JobPlanned => nameof(JobPlanned),
            StepDone => nameof(StepDone),
            JobDone => nameof(JobDone),
            JobDropped => nameof(JobDropped),
            GateMended => nameof(GateMended),
            StockChanged => nameof(StockChanged),
            StockCounted => nameof(StockCounted),
            Noted => nameof(Noted),
            PhotoTaken => nameof(PhotoTaken),
            MeasureTaken => nameof(MeasureTaken),
            OarRead => nameof(OarRead),
            ChangePlanned => nameof(ChangePlanned),
            MeasureSet => nameof(MeasureSet),
            _ => nameof(UnknownFact),
        };
    }

    /// <summary>What it is about, by the name that people know: a boat, a rack, a gauge; null where it is about none of these.</summary>
    /// <param name="club">The club, for the names.</param>
    /// <param name="fact">The fact; a retraction is about what it takes back.</param>
    public static string? About(Club club, Fact fact)
    {
        ArgumentNullException.ThrowIfNull(club);
        if (fact is Retracted back)
        {
            return club.Find(back.Entry) is { } taken && taken.Fact is not Retracted ? About(club, taken.Fact) : null;
        }

        Subject subject = Subject.Of(fact);
        if (subject.Thing == "job")
        {
            return BoatOfJob(club, subject.Key) is { } boat ? Name(club, Things.Boat, boat) : null;
        }

        return Things.Fields.ContainsKey(subject.Thing) && subject.Thing != Things.Settings ? Name(club, subject.Thing, subject.Key) : null;
    }

    private static string Name(Club club, string thing, string key) => new ThingView(club, thing, key)["name"] ?? key;

    private static string? BoatOfJob(Club club, string job) => club.Subjects
        .Where(s => s.Thing == Things.Boat)
        .FirstOrDefault(s => club.Everything(s).Any(r => (r.Fact as JobPlanned)?.Job == job || (r.Fact as ChangePlanned)?.Job == job)) is { Key: { Length: > 0 } key } ? key : null;
}
