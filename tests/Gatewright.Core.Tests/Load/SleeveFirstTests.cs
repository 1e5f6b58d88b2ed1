using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Load;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Core.Simulating;
using Gatewright.Core.Stroke;
using Gatewright.Core.Tests.Diagnosing;

namespace Gatewright.Core.Tests.Load;

/// <summary>Whether the gate is to be mended first, or the sleeve of the oar in it turned.</summary>
public class SleeveFirstTests
{
    private static readonly SeatRig Rig = SeatRig.FromCentimetres(Rowing.Sweep, 80, 113, 342, 15);
    private static readonly OarFigure True = new(0, 0.1, []);
    private static readonly GatePlace Port = new(2, Side.Port);
    private static readonly Station[] AllStations = [Station.Catch, Station.Abeam, Station.Finish];

    private static BoatBalance Balance(Func<GatePlace, OarFigure?> sleeves, Func<int, double>? gates = null, params Reading[] also) => BoatBalance.Of(
        BoatCheck.Of(
            Boats.Boat("8+", [.. Enumerable.Range(1, 8).SelectMany(seat =>
                AllStations.Select(at => Boats.Read(Boats.Gate(seat), at, gates?.Invoke(seat) ?? 4))), .. also]),
            BoatContext.None,
            CheckSettings.Default),
        new SeatsOnWater(_ => MeasuredSeat.Typed(Rig) with { Assumed = SeatRig.Measures(Rowing.Sweep) }, sleeves, gate => $"Oar {gate.Seat}"),
        new DriveProfile("thousand", 1000),
        new Draws(new Random(5).NextDouble))!;

    private static Func<GatePlace, OarFigure?> At(int seat, OarFigure sleeve) => gate => gate.Seat == seat ? sleeve : True;

    /// <summary>
    /// A sleeve that leans the blade's top 2° to the stern is turned by 2° to the bow, and the other way round. All gates read as they
    /// should: of the roll of 2 · 14.7 N m in the mean most goes with it.
    /// </summary>
    [Theory]
    [InlineData(2, 2)]
    [InlineData(3, -2)]
    public void A_sleeve_that_is_off_in_a_true_gate_is_turned_by_what_it_is_off(int seat, double degrees)
    {
        BoatBalance balance = Balance(At(seat, new(degrees, 0.2, [])));

        Assert.All([balance.ForRoll, balance.ForLoad], first =>
        {
            SleeveGain sleeve = first.Sleeve!;
            Assert.Equal((seat, $"Oar {seat}"), (sleeve.Gate.Seat, sleeve.Oar));
            Assert.Equal(degrees, sleeve.ToBow.Value.Degrees, 1e-9);
            Assert.Equal(0.2, sleeve.ToBow.U.Degrees, 1e-9);
            Assert.True(sleeve.Probability > 0.9, $"{sleeve.Probability}");
            Assert.InRange(sleeve.Fall, 0.5 * first.Now, first.Now);
        });
    }

    [Fact]
    public void A_gate_that_is_off_with_a_true_oar_in_it_is_mended()
    {
        BoatBalance balance = Balance(_ => True, seat => seat == 2 ? 2 : 4);

        Assert.Null(balance.ForRoll.Sleeve);
        Assert.Equal(2, balance.ForRoll.Gate!.Gate.Seat);
    }

    /// <summary>What the gate has too little the sleeve adds: the blade is as it should be, and to mend either alone would spoil it.</summary>
    [Fact]
    public void Where_gate_and_sleeve_make_up_for_each_other_neither_is_first()
    {
        BoatBalance balance = Balance(At(2, new(2, 0.1, [])), seat => seat == 2 ? 2 : 4);

        Assert.True(balance.ForRoll.Sleeves.Single(s => s.Gate.Seat == 2).Fall < 0);
        Assert.True(balance.ForRoll.Gates.Single(g => g.Gate.Seat == 2).Fall < 0);
    }

    [Fact]
    public void A_sleeve_that_nobody_read_is_not_among_what_could_be_turned()
    {
        BoatBalance balance = Balance(gate => gate.Seat == 4 ? new(1, 0.1, []) : null);

        Assert.Equal(4, Assert.Single(balance.ForRoll.Sleeves).Gate.Seat);
    }

    /// <summary>Nobody turns a sleeve by less than twice what its amount may be off by.</summary>
    [Theory]
    [InlineData(0, 0.1, 0)]
    [InlineData(0.99, 0.5, 0)]
    [InlineData(1.01, 0.5, 1)]
    [InlineData(-1.01, 0.5, 1)]
    public void A_sleeve_is_turned_only_where_it_is_surely_off(double degrees, double u, int count) =>
        Assert.Equal(count, Balance(At(2, new(degrees, u, []))).ForRoll.Sleeves.Count);

    /// <summary>
    /// Of what is expected to help, the likeliest; the likeliest of all may be expected to make it worse, by overshooting in the other draws.
    /// </summary>
    [Theory]
    [InlineData(0.3, 5, 0.2, 4, 0.1, "gate")]
    [InlineData(0.3, 5, 0.4, 4, 0.1, "sleeve")]
    [InlineData(0.3, 5, 0.4, -4, 0.1, "gate")]
    [InlineData(0.4, -5, 0.3, 4, 0.1, "sleeve")]
    [InlineData(0.3, -5, 0.4, -4, 0.1, "nothing")]
    [InlineData(0.3, 5, 0.2, 4, 0.35, "nothing")]
    [InlineData(0.3, 5, 0.3, 4, 0.3, "gate")]
    public void First_is_the_likeliest_that_is_expected_to_help(
        double gate, double gateFall, double sleeve, double sleeveFall, double none, string first)
    {
        var choice = new MendFirst(
            20, [new(Port, gateFall, gate)], [new(Port, null, Estimate.FromDegrees(1, 0.1), sleeveFall, sleeve)], none);

        Assert.Equal(first == "gate", choice.Gate is not null);
        Assert.Equal(first == "sleeve", choice.Sleeve is not null);
    }

    [Fact]
    public void The_chances_of_gates_sleeves_and_none_are_all_there_are()
    {
        BoatBalance balance = Balance(gate => new(0.3 * gate.Seat, 0.3, []), seat => 4 + (0.2 * (seat - 4)));

        Assert.All([balance.ForRoll, balance.ForLoad], first => Assert.Equal(
            1, first.None + first.Gates.Sum(g => g.Probability) + first.Sleeves.Sum(s => s.Probability), 1e-9));
    }

    /// <summary>Which oar was in the gate when the boat was read nobody said: only its place is told.</summary>
    [Fact]
    public void A_sleeve_read_with_the_boat_has_no_name()
    {
        Reading read = Boats.Read(Boats.Gate(2), Station.Abeam, 3) with { Item = ReadItem.Sleeve };

        BoatBalance balance = Balance(gate => gate.Seat == 2 ? new(-3, 0.1, []) : True, null, read);

        SleeveGain sleeve = balance.ForRoll.Sleeves.Single(s => s.Gate.Seat == 2);
        Assert.Null(sleeve.Oar);
        Assert.InRange(sleeve.ToBow.Value.Degrees, 1, 3);
    }
}
