using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Rounds;

/// <summary>What is said of how a boat lies while it is read: moved it is another lying, entered wrongly it is put right for all of it.</summary>
public sealed class LyingSaidTests
{
    private static readonly Laying ByEye = new(Lie.Upright, LevelBasis.ByEye);
    private readonly RoundClubs _clubs = RoundClubs.Of("2-");

    [Theory]
    [InlineData(true, 2)]
    [InlineData(false, 1)]
    public void A_boat_that_was_moved_has_a_level_of_its_own_though_it_lies_alike(bool isMoved, int levels)
    {
        Read(1, Side.Starboard, ByEye);
        Say(ByEye, isMoved);
        Read(2, Side.Port, ByEye);

        Assert.Equal(levels, Lies.Distinct().Count());
        Assert.Equal(levels, _clubs.InRound.Readings.Select(r => ((ReadingTaken)r.Fact).Lying).Distinct().Count());
    }

    /// <summary>What the eye is off by is the same for all gates of one lying, and another for those of the next.</summary>
    [Fact]
    public void The_level_no_longer_cancels_between_gates_read_before_and_after()
    {
        Read(1, Side.Starboard, ByEye);
        Say(ByEye, isMoved: true);
        Read(2, Side.Port, ByEye);
        MeasuringSettings settings = MeasuringSettings.Default;

        var corrected = CorrectedReadings.Of(_clubs.View.Record(settings)!.Current.Readings, settings);

        // The unnamed gauge's zero is all they share: 0.2² (its default).
        Assert.Equal(0.04, corrected.Covariance(0, 1), 6);
    }

    [Fact]
    public void That_it_was_moved_outlasts_a_restart_before_the_next_reading()
    {
        Read(1, Side.Starboard, ByEye);
        Say(ByEye, isMoved: true);

        Assert.Equal(ByEye, Laying.Usual(_clubs.Club, _clubs.InRound));
        Assert.Equal(0, _clubs.InRound.ReadAsItLies);
        Read(2, Side.Port, ByEye, "other");
        Assert.Equal(_clubs.InRound.Laid!.Lying, ((ReadingTaken)_clubs.InRound.Last!.Fact).Lying);
    }

    [Fact]
    public void Moved_before_anything_was_read_as_it_lies_it_is_no_other_lying()
    {
        Say(ByEye, isMoved: true);
        Say(ByEye, isMoved: true);
        Say(ByEye with { Lie = Lie.Inverted }, isMoved: true);
        Read(1, Side.Starboard, ByEye with { Lie = Lie.Inverted });

        Assert.Single(_clubs.View.Records.Select(r => r.Fact).OfType<BoatLaid>().Select(l => l.Lying).Distinct());
        Assert.Equal(Lie.Inverted, Assert.Single(Lies).Lie);
    }

    [Fact]
    public void What_is_laid_after_the_move_has_the_level_of_after_it()
    {
        Read(1, Side.Starboard, ByEye);
        Say(ByEye, isMoved: true);
        Read(2, Side.Port, ByEye);
        _clubs.Add(new BoatLaid("another", RoundClubs.Boat, Lie.Upright, LevelBasis.ByEye), new ReadingTaken("another", RoundClubs.Boat, ReadItem.Gate, 2, Side.Port, 4));

        BoatLie[] lies = Lies;
        Assert.NotEqual(lies[0], lies[2]);
        Assert.Equal(lies[1], lies[2]);
    }

    /// <summary>Whatever was entered wrongly and put right, at once, after more readings or on another day: all is judged as if it had been right from the start.</summary>
    [Property(MaxTest = 60)]
    public Property Put_right_it_is_as_if_it_had_been_entered_so() => Prop.ForAll(Any.ToArbitrary(), story =>
    {
        (Club put, Club right) = (Journal(story, story.Wrong), Journal(story, story.Right));

        Assert.Equal(Told(right), Told(put));
        Assert.Equal(
            new BoatInRound(new(right, RoundClubs.Boat), RoundClubs.Round).Readings.Select(r => r.Fact),
            new BoatInRound(new(put, RoundClubs.Boat), RoundClubs.Round).Readings.Select(r => r.Fact));
        SeenBoat seen = SeenBoat.Of(put, new(new(put, RoundClubs.Boat), RoundClubs.Round), Station.Catch);
        SeenBoat once = SeenBoat.Of(right, new(new(right, RoundClubs.Boat), RoundClubs.Round), Station.Catch);
        Assert.Equal(once.Verdict?.Gates.SelectMany(g => g.Reasons), seen.Verdict?.Gates.SelectMany(g => g.Reasons));
    });

    private sealed record Story(string Class, Laying Wrong, Laying Right, IReadOnlyList<(int Seat, Side Side, ReadItem Item, Station At, decimal Value)> Readings, int PutRightAfter, int Days);

    private static Club Journal(Story story, Laying entered)
    {
        long begin = new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero).ToUnixTimeMilliseconds();
        int number = 0;
        Club club = Club.Empty(Journals.Club);
        Add(new ThingSet(Things.Boat, RoundClubs.Boat, new Dictionary<string, string?> { ["name"] = "Heron", ["class"] = story.Class }));
        Add(new ThingSet(Things.Rack, "A", new Dictionary<string, string?> { ["bed"] = "firm" }));
        Add(new RackLevelRead("A", 0.4m, -0.3m));
        Add(new GaugeReversed("g", 4.3m, -3.9m));
        Laying laying = entered;
        for (int i = 0; i < story.Readings.Count; i++)
        {
            (int seat, Side side, ReadItem item, Station at, decimal value) = story.Readings[i];
            ReadingStep step = item == ReadItem.Gate ? ReadingStep.Face(new(seat, side), at) : ReadingStep.Of(item, new(seat, side));
            var walk = BoatWalk.Open([], new(new(club, RoundClubs.Boat), RoundClubs.Round), step);
            foreach (Fact fact in walk.Reading(value, laying, "l1", "g"))
            {
                Add(fact);
            }

            if (i == story.PutRightAfter || i == story.Readings.Count - 1)
            {
                begin += story.Days * 86_400_000L;
                if (new BoatInRound(new(club, RoundClubs.Boat), RoundClubs.Round).Said(story.Right, isMoved: false, "never") is { } said)
                {
                    Assert.Equal("l1", said.Lying);
                    Add(said);
                }

                begin -= story.Days * 86_400_000L;
                laying = story.Right;
            }
        }

        return club;

        void Add(Fact fact) => club = club.With(Journals.Entry(++number, fact, begin + number));
    }

    private static string Told(Club club)
    {
        BoatCheck check = new BoatView(club, RoundClubs.Boat).Record(MeasuringSettings.Default)!.Check(CheckSettings.Default);
        return string.Join('\n', check.Readings.Readings.Select(r => r.ToString())
            .Concat(check.Verdict.Gates.SelectMany(g => g.Reasons.Select(r => $"{g.Gate} {g.Verdict} {r}").Concat(g.Pitches.Select(p => $"{g.Gate} {p}")))));
    }

    private static Gen<Laying> AnyLaying { get; } =
        from lie in Gen.Elements(Lie.Upright, Lie.Inverted)
        from level in Gen.Elements(Enum.GetValues<LevelBasis>())
        from bowHigh in Gen.Choose(-12, 12)
        from portLow in Gen.Choose(-12, 12)
        select level switch
        {
            LevelBasis.Read => new Laying(lie, level, bowHigh / 10m, portLow / 10m),
            LevelBasis.Rack => new(lie, level, Rack: "A"),
            _ => new(lie, level),
        };

    private static Gen<Story> Any { get; } =
        from boatClass in Gen.Elements("2-", "2x")
        from wrong in AnyLaying
        from right in AnyLaying
        from readings in (from seat in Gen.Choose(1, 2)
                          from side in Gen.Elements(Side.Port, Side.Starboard)
                          from item in Gen.Elements(ReadItem.Gate, ReadItem.Gate, ReadItem.Gate, ReadItem.PinAft, ReadItem.PinOut, ReadItem.GatePitch)
                          from at in Gen.Elements(Station.Catch, Station.Abeam, Station.Finish)
                          from value in Gen.Choose(-2, 14)
                          select (seat, boatClass == "2-" ? (seat == 1 ? Side.Starboard : Side.Port) : side, item, at, value * 0.5m)).NonEmptyListOf()
        from after in Gen.Choose(0, 6)
        from days in Gen.Elements(0, 0, 1, 40)
        select new Story(boatClass, wrong, right, [.. readings], after, days);

    private BoatLie[] Lies => [.. _clubs.View.Record(MeasuringSettings.Default)!.Current.Readings.Select(r => r.Lie)];

    private void Say(Laying laying, bool isMoved)
    {
        if (_clubs.InRound.Said(laying, isMoved, Guid.NewGuid().ToString("N")) is { } said)
        {
            _clubs.Add(said);
        }
    }

    private void Read(int seat, Side side, Laying laying, string newLying = "l1") => _clubs.Add(
        _clubs.Open().GoTo(ReadingStep.Face(new(seat, side), Station.Abeam)).Reading(4, laying, newLying, null));
}
