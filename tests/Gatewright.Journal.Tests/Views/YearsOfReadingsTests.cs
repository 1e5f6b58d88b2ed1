using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Views;

/// <summary>A boat is judged at each tap without going through all that was ever read of it: what is said is as if it had been.</summary>
public sealed class YearsOfReadingsTests
{
    private const string Boat = "heron";
    private static readonly DateOnly First = new(2026, 5, 4);
    private static readonly long Begin = new DateTimeOffset(First, new(8, 0), TimeSpan.Zero).ToUnixTimeMilliseconds();
    private static readonly GatePlace[] Gates = [new(1, Side.Starboard), new(2, Side.Port)];

    /// <summary>Entries some days apart, the days they state before, after or of their own, at times that often collide.</summary>
    private static Gen<Recorded[]> Any { get; } =
        from count in Gen.Choose(1, 40)
        from entries in Gen.CollectToArray(Enumerable.Range(0, count), number => One(number, count))
        select entries;

    [Property(MaxTest = 500)]
    public Property Which_readings_speak_of_a_gate_as_it_was_is_told_as_by_the_days_of_all_records() => Prop.ForAll(Any.ToArbitrary(), entries =>
    {
        Club club = Club.Empty(Journals.Club).With(entries);
        var boat = new BoatView(club, Boat);
        foreach (GatePlace gate in Gates)
        {
            foreach (GateReading reading in GateReadings.Of(club, boat, gate, 1).Where(r => r.Holds != ReadingHolds.TakenBack))
            {
                Assert.Equal(IsBefore(boat, reading.Record), reading.Holds == ReadingHolds.BeforeChange);
            }
        }
    });

    [Property(MaxTest = 500)]
    public Property What_a_round_has_of_a_boat_is_found_among_all_its_records() => Prop.ForAll(Any.ToArbitrary(), entries =>
    {
        Club club = Club.Empty(Journals.Club).With(entries);
        var boat = new BoatView(club, Boat);
        var round = new BoatInRound(boat, "r1");
        List<BoatLaid> laid = [.. boat.Records.Select(r => r.Fact).OfType<BoatLaid>().Where(l => l.Round == "r1")];
        List<string> lyings = [.. laid.Select(l => l.Lying).Distinct()];

        Assert.Equal(boat.Records.Where(r => r.Fact is ReadingTaken taken && lyings.Contains(taken.Lying)), round.Readings);
        Assert.Equal(laid.LastOrDefault(l => l.Lying == lyings[^1]), round.Laid);
        Assert.Equal(
            boat.Records.Select(r => r.Fact).OfType<ReadingTaken>().LastOrDefault(t => t.Item == ReadItem.Gate && t.Seat == 1)?.Value,
            round.LastValue(ReadingStep.Face(Gates[0], Station.Abeam)));
    });

    /// <summary>The same entries read anew, as they come back from a server, are the same; one more, or one taken back, is not.</summary>
    [Property(MaxTest = 300)]
    public Property A_boat_of_which_nothing_new_was_said_is_like_it_was() => Prop.ForAll(Any.ToArbitrary(), entries =>
    {
        Club shared = Club.Empty(Journals.Club).With(entries[..(entries.Length / 2)]);
        Club own = shared.With(entries[(entries.Length / 2)..]);
        Club back = shared.With(entries[(entries.Length / 2)..].Select(r => Recorded.Of(r.Entry)));
        Club more = back.With(Journals.Entry(1000, new Held(Boat, "knock"), Begin));
        Club less = back.With(Journals.Entry(1000, new Retracted(Journals.Id(0)), Begin));

        Assert.True(back.IsLike(own, Subject.Boat(Boat)) && back.IsLike(own, Subject.Journal));
        Assert.False(more.IsLike(own, Subject.Boat(Boat)));
        Assert.True(more.IsLike(own, Subject.Journal));
        Assert.False(less.IsLike(own, Subject.Journal));
    });

    /// <summary>The plain way: the latest change of the gate by day and then by the journal, over every record there is.</summary>
    private static bool IsBefore(BoatView boat, Recorded reading)
    {
        var taken = (ReadingTaken)reading.Fact;
        var gate = new GatePlace(taken.Seat, taken.Side);
        Recorded? change = boat.Records.Where(r => r.Fact is Reported { Kind: ReportKind.Knock } told ? Is(told.Seat, told.Side) : r.Fact is GateMended mended && Is(mended.Seat, mended.Side))
            .Concat(boat.Jobs.Where(j => j.Gate == gate).SelectMany(j => new[] { Proof(j), j.Plan.Cause == Cause.Sleeve ? null : j.Done }).OfType<Recorded>())
            .OrderBy(r => DayOf(boat, r)).ThenBy(r => r.Entry.Time).ThenBy(r => r.Entry.Id)
            .LastOrDefault();
        return change is not null
            && taken.Item != ReadItem.Sleeve
            && (taken.Job is null || (change.Fact as JobDone)?.Job != taken.Job)
            && (DayOf(boat, change), change.Entry.Time, change.Entry.Id).CompareTo((DayOf(boat, reading), reading.Entry.Time, reading.Entry.Id)) > 0;

        bool Is(int? seat, Side? side) => seat == gate.Seat && side == gate.Side;
        Recorded? Proof(JobView job) => boat.Records.FirstOrDefault(r =>
            r.Fact is ReadingTaken { Item: not ReadItem.Sleeve } read && read.Job == job.Key && Is(read.Seat, read.Side));
    }

    private static DateOnly DayOf(BoatView boat, Recorded record) =>
        (record.Fact is ReadingTaken taken
            ? boat.Records.Select(r => r.Fact).OfType<BoatLaid>().LastOrDefault(l => l.Lying == taken.Lying)?.Date
            : record.Fact is GateMended mended ? mended.Date
            : record.Fact is Reported told ? told.Date
            : null) ?? Day.Of(record.Entry);

    private static Gen<Recorded> One(int number, int count) =>
        from day in Gen.Choose(0, 4)
        from stated in Gen.Frequency((3, Gen.Constant<DateOnly?>(null)), (1, Gen.Choose(0, 4).Select(d => (DateOnly?)First.AddDays(d))))
        from gate in Gen.Elements(Gates)
        from lying in Gen.Elements("a", "b", "c")
        from job in Gen.Elements(null, "j1", "j2")
        from cause in Gen.Elements(Cause.GatePitch, Cause.Sleeve)
        from item in Gen.Elements(ReadItem.Gate, ReadItem.Gate, ReadItem.Gate, ReadItem.Sleeve)
        from round in Gen.Elements("r1", "r2")
        from target in Gen.Choose(0, count - 1)
        from value in Gen.Choose(0, 12)
        from fact in Gen.Frequency(
            (8, Gen.Constant<Fact>(new ReadingTaken(lying, Boat, item, gate.Seat, gate.Side, value, item == ReadItem.Gate ? Station.Abeam : null, Job: job))),
            (3, Gen.Constant<Fact>(new BoatLaid(lying, Boat, Lie.Upright, LevelBasis.ByEye, Date: stated, Round: round))),
            (1, Gen.Constant<Fact>(new Reported(Boat, ReportKind.Knock, gate.Seat, gate.Side, Date: stated))),
            (1, Gen.Constant<Fact>(new GateMended(Boat, gate.Seat, gate.Side, stated))),
            (1, Gen.Constant<Fact>(new JobPlanned(job ?? "j1", Boat, cause, "insert-swap", [], [], [], gate.Seat, gate.Side))),
            (1, Gen.Constant<Fact>(new JobDone(job ?? "j1", cause))),
            (1, Gen.Constant<Fact>(new Retracted(Journals.Id(target)))))
        select Journals.Entry(number, fact, Begin + (day * 86_400_000L), number % 2);
}
