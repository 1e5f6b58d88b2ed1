using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Tests.Rounds;

public sealed class BoatWalkTests
{
    private static readonly Laying ByEye = new(Lie.Upright, LevelBasis.ByEye);
    private readonly RoundClubs _clubs = RoundClubs.Of("4-");

    [Fact]
    public void After_a_reading_the_next_gate_waits_and_after_the_last_none()
    {
        BoatWalk walk = _clubs.Open();
        var seen = new List<string>();
        while (walk.Now is { } now)
        {
            seen.Add(now.Gate.ToString());
            walk = Tap(walk, 4);
        }

        Assert.Equal(["seat 2 port", "seat 4 port", "seat 3 starboard", "seat 1 starboard"], seen);
        Assert.Empty(walk.Left);
    }

    [Fact]
    public void The_boat_is_laid_once_with_its_first_reading()
    {
        BoatWalk walk = Tap(Tap(_clubs.Open(), 4), 4.5m);

        Assert.Single(_clubs.View.Records, r => r.Fact is BoatLaid { Round: RoundClubs.Round });
        Assert.Equal([4m, 4.5m], walk.Boat.Readings.Select(r => ((ReadingTaken)r.Fact).Value));
    }

    [Fact]
    public void A_boat_that_was_laid_otherwise_is_laid_anew()
    {
        BoatWalk walk = Tap(_clubs.Open(), 4);
        _clubs.Add(walk.Reading(5, new(Lie.Inverted, LevelBasis.BubbleCentred), "l2", "g1"));

        Assert.Equal(["l1", "l2"], _clubs.InRound.Readings.Select(r => ((ReadingTaken)r.Fact).Lying));
        Assert.Equal(Lie.Inverted, _clubs.InRound.Laid?.Lie);
        Assert.Equal("g1", ((ReadingTaken)_clubs.InRound.Last!.Fact).Gauge);
    }

    [Fact]
    public void What_was_passed_over_is_left_and_does_not_come_back_by_itself()
    {
        BoatWalk walk = _clubs.Open().Skip();
        ReadingStep skipped = walk.Order[0];
        walk = Tap(Tap(Tap(walk, 4), 4), 4);

        Assert.True(walk.IsOver);
        Assert.Equal([skipped], walk.Left);
        Assert.Equal(skipped, walk.GoTo(skipped).Now);
        Assert.True(Tap(walk.GoTo(skipped), 4) is { IsOver: true, Left.Count: 0 });
    }

    [Fact]
    public void After_a_gate_read_out_of_turn_one_goes_on_from_there_and_then_to_what_is_left()
    {
        BoatWalk walk = _clubs.Open();
        walk = Tap(walk.GoTo(walk.Order[2]), 4);
        Assert.Equal(walk.Order[3], walk.Now);
        walk = Tap(walk, 4);
        Assert.Equal(walk.Order[0], walk.Now);
    }

    [Fact]
    public void A_second_reading_of_a_gate_stands_beside_the_first_and_the_walk_goes_on()
    {
        BoatWalk walk = Tap(_clubs.Open(), 4);
        walk = Tap(walk.GoTo(walk.Order[0]), 9);

        Assert.Equal([4m, 9m], walk.Boat.Values(walk.Order[0]));
        Assert.Equal(9m, walk.Boat.LastValue(walk.Order[0]));
        Assert.Equal(walk.Order[1], walk.Now);
    }

    [Fact]
    public void Taken_back_the_reading_holds_no_more_and_its_gate_waits_again()
    {
        BoatWalk walk = Undo(Tap(Tap(_clubs.Open(), 4), 9));

        Assert.Equal(walk.Order[1], walk.Now);
        Assert.Equal([walk.Order[0]], walk.Order.Where(walk.Boat.IsRead));
        walk = Undo(walk);
        Assert.Equal(walk.Order[0], walk.Now);
        Assert.Empty(walk.Undoing);
    }

    [Fact]
    public void What_is_asked_for_comes_first_and_then_the_walk()
    {
        ReadingStep asked = ReadingStep.Of(ReadItem.PinOut, new(3, Side.Starboard));
        var walk = BoatWalk.Open(RoundOrder.Of(_clubs.Gates, [Station.Abeam]), _clubs.InRound, asked);

        Assert.Equal(asked, walk.Now);
        walk = Tap(walk, -1.5m);
        Assert.Equal(walk.Order[0], walk.Now);
        Assert.Equal([-1.5m], walk.Boat.Values(asked));
    }

    [Fact]
    public void After_a_restart_one_goes_on_where_one_stopped()
    {
        Tap(Tap(_clubs.Open(Station.Catch, Station.Abeam), 4), 4);

        BoatWalk again = _clubs.Open(Station.Catch, Station.Abeam);
        Assert.Equal(again.Order[2], again.Now);
        Assert.Equal(6, again.Left.Count);
    }

    [Fact]
    public void Another_round_does_not_count()
    {
        _clubs.ReadAll(4, RoundClubs.Day);
        BoatWalk walk = _clubs.Open();

        Assert.Equal(walk.Order[0], walk.Now);
        Assert.Empty(walk.Boat.Readings);
        Assert.Equal(4m, walk.Boat.LastValue(walk.Order[0]));
    }

    [Fact]
    public void Keys_go_round_the_boat_both_ways()
    {
        BoatWalk walk = _clubs.Open();

        Assert.Equal(walk.Order[^1], walk.Move(-1).Now);
        Assert.Equal(walk.Order[0], walk.Move(-1).Move(1).Now);
        Assert.Equal(walk.Order[1], walk.Move(5).Now);
    }

    private BoatWalk Tap(BoatWalk walk, decimal value)
    {
        _clubs.Add(walk.Reading(value, ByEye, "l1", null));
        return walk.Recorded(_clubs.InRound);
    }

    private BoatWalk Undo(BoatWalk walk)
    {
        _clubs.Add(walk.Undoing);
        return walk.Undone(_clubs.InRound);
    }
}
