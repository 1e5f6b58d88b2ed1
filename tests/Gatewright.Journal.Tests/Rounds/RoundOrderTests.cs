using Gatewright.Core;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Tests.Rounds;

public sealed class RoundOrderTests
{
    [Fact]
    public void One_walks_down_the_port_side_and_back_along_starboard() => Assert.Equal(
        ["2 port", "4 port", "6 port", "8 port", "7 starboard", "5 starboard", "3 starboard", "1 starboard"],
        Told(RoundOrder.Of(RoundClubs.Of("8+").Gates, [Station.Abeam])));

    [Fact]
    public void All_gates_of_one_station_come_before_the_next_in_the_order_of_the_stroke()
    {
        IReadOnlyList<ReadingStep> order = RoundOrder.Of(RoundClubs.Of("2x").Gates, [Station.Finish, Station.Catch]);

        Assert.Equal(["1 port", "2 port", "2 starboard", "1 starboard", "1 port", "2 port", "2 starboard", "1 starboard"], Told(order));
        Assert.Equal(
            [.. Enumerable.Repeat(Station.Catch, 4), .. Enumerable.Repeat(Station.Finish, 4)],
            order.Select(s => s.Station!.Value));
    }

    [Fact]
    public void Every_gate_of_every_class_has_its_step_at_every_station() => Assert.All(BoatClass.All, c =>
    {
        RoundClubs clubs = RoundClubs.Of(c.Name);
        IReadOnlyList<ReadingStep> order = RoundOrder.Of(clubs.Gates, Stations.All);
        Assert.Equal(3 * c.Gates, order.Distinct().Count());
        Assert.Equal(3 * c.Gates, order.Count);
    });

    private static IEnumerable<string> Told(IEnumerable<ReadingStep> order) => order.Select(s => $"{s.Gate.Seat} {s.Gate.Side.Word()}");
}
