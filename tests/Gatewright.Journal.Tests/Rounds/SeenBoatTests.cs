using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Rounds;

/// <summary>At each tap a boat is looked at by what came to it alone: what is seen is as if all of it had been gone through.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class SeenBoatTests
{
    private const string Boat = "heron";
    private const string Round = "r1";

    // More than a shelf takes up in bulk at once.
    private const int Years = 80;
    private static readonly long Begin = new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero).ToUnixTimeMilliseconds();

    [Property(MaxTest = 100)]
    public Property A_boat_that_grows_record_by_record_is_what_all_its_records_say() => Prop.ForAll(Any.ToArbitrary(), entries =>
    {
        Club club = Club.Empty(Journals.Club).With([Journals.Entry(5000, Journals.Set(Boat, "class", "2-"), Begin), .. entries[..^20]]);
        SeenBoat grown = Fresh(club, Station.Catch);
        foreach (Recorded[] some in entries[^20..].Chunk(2))
        {
            // One by itself, two at once; now and then at another station, and where nobody looked at what came between.
            foreach (Recorded[] added in some[0].Entry.Time.Counter == 0 ? [some] : some.Select(r => new[] { r }))
            {
                club = club.With(added);
                Station station = added[0].Entry.Time.Milliseconds / 3_600_000 % 5 == 0 ? Station.Finish : Station.Catch;
                grown = grown.In(club, station);
                AssertSame(Fresh(club, station), grown);
            }
        }
    });

    /// <summary>What came back from a server is read anew, and is the same: the boat goes on growing from there.</summary>
    [Fact]
    public void A_reading_counts_once_when_it_comes_back_from_the_server()
    {
        Club shared = Club.Empty(Journals.Club).With([
            Journals.Entry(1, Journals.Set(Boat, "class", "2-"), Begin),
            Journals.Entry(2, new BoatLaid("a", Boat, Lie.Upright, LevelBasis.ByEye, Round: Round), Begin + 1)]);
        Recorded first = Journals.Entry(3, Reading(1, 4), Begin + 2);
        SeenBoat seen = Fresh(shared, Station.Catch).In(shared.With(first), Station.Catch);
        Club back = shared.With(Recorded.Of(first.Entry));

        SeenBoat next = seen.In(back.With(Journals.Entry(4, Reading(2, 1), Begin + 3)), Station.Catch);

        Assert.Equal([4m, 1m], next.Boat.Readings.Select(r => ((ReadingTaken)r.Fact).Value));
        Assert.Equal([Verdict.Good, Verdict.Stop], next.Verdict!.Gates.Select(g => g.Verdict));
    }

    /// <summary>Two readings of a gate in lyings between which the boat was not moved share their level, in however many pieces they came.</summary>
    [Fact]
    public void What_is_laid_after_a_move_is_seen_alike_at_the_tap_and_loaded_anew()
    {
        Club club = Club.Empty(Journals.Club).With([
            Journals.Entry(1, Journals.Set(Boat, "class", "2-"), Begin),
            Journals.Entry(2, new BoatLaid("a", Boat, Lie.Upright, LevelBasis.ByEye, Round: Round, Moved: true), Begin + 1),
            Journals.Entry(3, Reading(1, 4), Begin + 2)]);
        SeenBoat grown = Fresh(club, Station.Catch);
        club = club.With(Journals.Entry(4, new BoatLaid("b", Boat, Lie.Upright, LevelBasis.ByEye, Round: Round), Begin + 3));
        grown = grown.In(club, Station.Catch);
        club = club.With(Journals.Entry(5, Reading(1, 4.5m) with { Lying = "b" }, Begin + 4));

        AssertSame(Fresh(club, Station.Catch), grown.In(club, Station.Catch));
    }

    private static SeenBoat Fresh(Club club, Station station) => SeenBoat.Of(club, new(new(club, Boat), Round), station);

    private static void AssertSame(SeenBoat fresh, SeenBoat grown)
    {
        Assert.Equal(fresh.View.Records, grown.View.Records);
        Assert.Equal((fresh.View.Name, fresh.View.Class), (grown.View.Name, grown.View.Class));
        Assert.Equal(fresh.Boat.Readings, grown.Boat.Readings);
        Assert.Equal(fresh.Boat.Laid, grown.Boat.Laid);
        Assert.Equal(fresh.Verdict?.Verdict, grown.Verdict?.Verdict);
        Assert.Equal(Told(fresh.Verdict), Told(grown.Verdict));
    }

    private static IEnumerable<string> Told(BoatVerdict? verdict) => verdict is null ? []
        : verdict.Gates.SelectMany(g => g.Reasons.Select(r => $"{g.Gate} {r}").Concat(g.Pitches.Select(p => $"{g.Gate} {p}")));

    private static ReadingTaken Reading(int seat, decimal value) =>
        new("a", Boat, ReadItem.Gate, seat, seat == 1 ? Side.Starboard : Side.Port, value, Station.Catch);

    private static Gen<Recorded[]> Any { get; } =
        from years in Gen.Elements(0, Years)
        from entries in Gen.CollectToArray(Enumerable.Range(0, years + 20), number => One(number, isOld: number < years))
        select entries;

    private static Gen<Recorded> One(int number, bool isOld) =>
        from seat in Gen.Choose(1, 2)
        from lying in Gen.Elements("a", "b")
        from station in Gen.Elements(Station.Catch, Station.Catch, Station.Finish)
        from value in Gen.Choose(0, 12)
        from job in Gen.Frequency((9, Gen.Constant<string?>(null)), (1, Gen.Constant<string?>("j1")))
        from round in Gen.Elements(Round, "r2")
        from late in Gen.Frequency((6, Gen.Constant(0)), (1, Gen.Choose(1, 2 * Years)))
        from moved in Gen.Elements<bool?>(null, null, true)
        from target in Gen.Choose(0, number)
        from fact in Gen.Frequency(
            (12, Gen.Constant<Fact>(new ReadingTaken(lying, Boat, ReadItem.Gate, seat, seat == 1 ? Side.Starboard : Side.Port, value, station, Job: job))),
            (2, Gen.Constant<Fact>(new BoatLaid(lying, Boat, Lie.Upright, LevelBasis.ByEye, Round: round, Moved: moved))),
            (1, Gen.Constant<Fact>(new GateMended(Boat, seat, seat == 1 ? Side.Starboard : Side.Port))),
            (1, Gen.Constant<Fact>(new Held(Boat, "knock"))),
            (1, Gen.Constant<Fact>(Journals.Set(Boat, "name", $"Heron {value}"))),
            (1, Gen.Constant<Fact>(Journals.Set("teal", "name", "Teal"))),
            (1, Gen.Constant<Fact>(new Retracted(Journals.Id(target)))))
        select Journals.Entry(number, fact, Begin + ((isOld ? 0 : Years) + number - late) * 3_600_000L, number % 2);
}
