using Gatewright.Core.Judging;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Judging;

public class MissingGateTests
{
    [Fact]
    public void A_sweep_boat_misses_seats_since_only_the_rigging_tells_the_side() =>
        Assert.Equal(
            ["seat 2", "seat 4"],
            MissingGate.Of(BoatClass.Parse("4-"), [Taken.Seat(1, Side.Starboard), Taken.Seat(3)]).Select(m => m.ToString()));

    [Fact]
    public void A_sculling_boat_misses_each_side() =>
        Assert.Equal(
            ["seat 1 starboard", "seat 2 port"],
            MissingGate.Of(BoatClass.Parse("2x"), [Taken.Seat(1), Taken.Seat(2, Side.Starboard)]).Select(m => m.ToString()));

    [Fact]
    public void A_boat_read_whole_misses_nothing() =>
        Assert.Empty(MissingGate.Of(BoatClass.Parse("1x"), [Taken.Seat(1), Taken.Seat(1, Side.Starboard)]));
}
