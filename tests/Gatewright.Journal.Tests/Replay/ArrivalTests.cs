using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Replay;

/// <summary>
/// Two devices record while apart, by clocks that differ; a third hears of it in any order and in any pieces, and looks after each. All
/// that it tells then is what a device tells that had everything at once.
/// </summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class ArrivalTests
{
    private const string Boat = ClubTold.Boat;
    private const string Round = ClubTold.Round;
    private static readonly long Begin = new DateTimeOffset(2026, 5, 4, 21, 0, 0, TimeSpan.Zero).ToUnixTimeMilliseconds();

    [Property(MaxTest = 150)]
    public Property What_is_told_does_not_depend_on_what_came_first() => Prop.ForAll(
        (from entries in Any
         from shuffled in Gen.Shuffle(entries)
         from sizes in Gen.Choose(1, 5).ListOf(entries.Length)
         select (entries, pieces: Pieces(shuffled, sizes))).ToArbitrary(),
        given => AgreesAsync(given.entries, given.pieces).GetAwaiter().GetResult());

    private static async Task<bool> AgreesAsync(Recorded[] entries, List<Recorded[]> pieces)
    {
        Club club = Club.Empty(Journals.Club);
        ShedVerdicts shed = ShedVerdicts.Of(club);
        var counted = new ChancesView(club);
        SeenBoat seen = SeenBoat.Of(club, new(new(club, Boat), Round), Station.Catch);
        foreach (Recorded[] piece in pieces)
        {
            club = club.With(piece);
            shed = shed.With(club, piece.Any(ChancesView.Heeds));
            counted = new(club, counted);
            seen = seen.In(club, Station.Catch);
            await ClubTold.AskedAsync(shed);
        }

        Assert.Equal(await ClubTold.OfAsync(Club.Empty(Journals.Club).With(entries)), await ClubTold.OfAsync(club, shed, seen, counted));
        return true;
    }

    private static List<Recorded[]> Pieces(Recorded[] entries, IReadOnlyList<int> sizes)
    {
        List<Recorded[]> pieces = [];
        int from = 0;
        foreach (int size in sizes.TakeWhile(_ => from < entries.Length))
        {
            pieces.Add(entries[from..Math.Min(from + size, entries.Length)]);
            from += size;
        }

        return pieces;
    }

    private static Gen<Recorded[]> Any { get; } =
        from count in Gen.Choose(4, 40)
        from entries in Gen.CollectToArray(Enumerable.Range(2, count), One)
        select (Recorded[])[Journals.Entry(1, Journals.Set(Boat, "class", "2-"), Begin), .. entries];

    /// <summary>Times are few and meet, across the end of a day too.</summary>
    private static Gen<Recorded> One(int number) =>
        from quarter in Gen.Choose(0, 16)
        from counter in Gen.Choose(0, 1)
        from device in Gen.Elements("phone", "tablet")
        from fact in Gen.Frequency((3, Laying), (6, Reading), (2, Mending), (2, Beside), (1, Gen.Choose(1, number).Select(target => (Fact)new Retracted(Journals.Id(target)))))
        select Journals.Entry(number, fact, Begin + (quarter * 900_000L), counter, device, member: device);

    private static Gen<Fact> Laying { get; } =
        from lying in Gen.Elements("a", "b", "c")
        from lie in Gen.Elements(Lie.Upright, Lie.Inverted)
        from level in Gen.Elements(LevelBasis.ByEye, LevelBasis.BubbleCentred, LevelBasis.Rack)
        from moved in Gen.Elements<bool?>(null, true)
        from round in Gen.Elements(Round, Round, null)
        from day in Gen.Elements<DateOnly?>(null, null, new(2026, 5, 1))
        select (Fact)new BoatLaid(lying, Boat, lie, level, Rack: level == LevelBasis.Rack ? "r" : null, Round: round, Date: day, Moved: moved);

    private static Gen<Fact> Reading { get; } =
        from lying in Gen.Elements("a", "b", "c")
        from seat in Gen.Choose(1, 2)
        from value in Gen.Choose(0, 12)
        from gauge in Gen.Elements("g", null)
        from job in Gen.Frequency((5, Gen.Constant<string?>(null)), (1, Gen.Constant<string?>("j")))
        select (Fact)new ReadingTaken(lying, Boat, ReadItem.Gate, seat, Of(seat), value / 2m, Station.Catch, Gauge: gauge, Job: job);

    private static Gen<Fact> Mending { get; } =
        from job in Gen.Elements("j", "k")
        from seat in Gen.Choose(1, 2)
        from found in Gen.Elements<Cause?>(null, Cause.PinOut, Cause.GatePitch)
        from fact in Gen.Elements<Fact>(
            new JobPlanned(job, Boat, Cause.PinOut, "shim", ["one", "two"], [new("shim", 0.5m, 1)], [new(Station.Catch, 4, 3.5m, 4.5m)], seat, Of(seat)),
            new StepDone(job, seat - 1),
            new JobDone(job, found),
            new JobDropped(job),
            new GateMended(Boat, seat, Of(seat)),
            new ChangePlanned("x", Boat, "wider", [new("set the spread", seat, [], Of(seat), "spread", 86)], []),
            new StepDone("x", 0),
            new MeasureTaken(Boat, "spread", seat, 84 + seat, "cm"),
            new Reported(Boat, ReportKind.Knock, seat, Of(seat)))
        select fact;

    private static Gen<Fact> Beside { get; } =
        from number in Gen.Choose(0, 9)
        from day in Gen.Elements<DateOnly?>(null, new(2026, 5, 2))
        from fact in Gen.Elements<Fact>(
            new Held(Boat, $"knock {number}"),
            new Released(Boat, "sound"),
            new Released(Boat, "sound", [Journals.Id(number)]),
            new StockCounted("shim", 0.5m, number),
            new StockChanged("shim", 0.5m, number - 5),
            new GaugeReversed("g", 4 + (number / 10m), -4),
            new RackLevelRead("r", number / 10m, 0.2m, day),
            Journals.Set(Boat, "name", $"Heron {number}"),
            Journals.Set(Boat, "rack", number % 2 == 0 ? "r" : null),
            Journals.Set("teal", "name", $"Heron {number}"),
            new ThingSet(Things.Settings, "chances", new Dictionary<string, string?> { ["reset"] = "2026-05-04" }),
            new Noted(Things.Boat, Boat, $"note {number}"))
        select fact;

    private static Side Of(int seat) => seat == 1 ? Side.Starboard : Side.Port;
}
