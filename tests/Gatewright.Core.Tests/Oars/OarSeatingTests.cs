using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Core.Tests.Diagnosing;

namespace Gatewright.Core.Tests.Oars;

/// <summary>Which oar goes to which gate.</summary>
public class OarSeatingTests
{
    private static readonly GatePlace[] Four = [new(1, Side.Starboard), new(2, Side.Port), new(3, Side.Starboard), new(4, Side.Port)];

    /// <summary>Worked by hand: the steepest gate of a side takes the oar that adds least, and all four blades stand at 4.5°.</summary>
    [Fact]
    public void The_steepest_gate_takes_the_oar_that_adds_least()
    {
        OarSeating seating = Of([4.5, 4, 3.5, 5], [("s1", Side.Starboard, 0), ("s2", Side.Starboard, 1), ("p1", Side.Port, 0.5), ("p2", Side.Port, -0.5)]);

        Assert.Equal(["s1", "p1", "s2", "p2"], seating.Seats.Select(s => s.Oar.Key));
        Assert.All(seating.Seats, s => Assert.Equal(4.5, s.Blade.Value.Degrees, 1e-12));
        Assert.Equal(0, seating.Range, 1e-12);

        // 0.3° of the gate and 0.4° of the sleeve: 0.5°.
        Assert.All(seating.Seats, s => Assert.Equal(0.5, s.Blade.U.Degrees, 1e-12));
    }

    /// <summary>Of the four ways to seat two oars a side none has a smaller variance.</summary>
    [Property(MaxTest = 200)]
    public Property No_other_seating_is_more_even() => Prop.ForAll(
        Gen.Choose(-30, 30).ArrayOf(8).ToArbitrary(),
        tenths =>
        {
            double[] gates = [.. tenths.Take(4).Select(t => 4 + (t / 10.0))];
            (string, Side, double)[] oars = [.. tenths.Skip(4).Select((t, i) => ($"o{i}", i < 2 ? Side.Starboard : Side.Port, t / 10.0))];
            double found = Variance([.. Of(gates, oars).Seats.Select(s => s.Blade.Value.Degrees)]);
            foreach (bool isStarboardTurned in new[] { false, true })
            {
                foreach (bool isPortTurned in new[] { false, true })
                {
                    double[] sleeves = [.. oars.Select(o => o.Item3)];
                    double[] blades =
                    [
                        gates[0] + sleeves[isStarboardTurned ? 1 : 0], gates[2] + sleeves[isStarboardTurned ? 0 : 1],
                        gates[1] + sleeves[isPortTurned ? 3 : 2], gates[3] + sleeves[isPortTurned ? 2 : 3],
                    ];

                    // Sums in another order.
                    Assert.InRange(found, 0, Variance(blades) + 1e-9);
                }
            }
        });

    /// <summary>A level or a zero that is off moves all alike and gives the same places.</summary>
    [Property(MaxTest = 100)]
    public Property What_all_share_changes_no_place() => Prop.ForAll(
        Gen.Choose(-20, 20).Select(t => t / 10.0).ToArbitrary(),
        shift =>
        {
            (string, Side, double)[] oars = [("s1", Side.Starboard, 0.2), ("s2", Side.Starboard, 1), ("p1", Side.Port, 0.4), ("p2", Side.Port, -0.5), ("p3", Side.Port, 0.1)];
            double[] gates = [4.4, 4, 3.6, 5];

            Assert.Equal(
                Of(gates, oars).Seats.Select(s => s.Oar.Key),
                Of([.. gates.Select(g => g + shift)], [.. oars.Select(o => (o.Item1, o.Item2, o.Item3 - (2 * shift)))]).Seats.Select(s => s.Oar.Key));
        });

    [Fact]
    public void Fewer_oars_than_gates_leave_gates_out_and_what_is_not_known_is_left_out()
    {
        OarSeating seating = Of([4, 4, 5, 4], [("s1", Side.Starboard, 0)], new Oar("loose", "Loose", Sleeve: Figure(0)), new Oar("unread", "Unread", Side.Port));

        Assert.Equal("s1", Assert.Single(seating.Seats).Oar.Key);
        Assert.Equal(0, seating.Range);
    }

    /// <remarks>√(0.36² + 0.62² + 2 · 0.2²) = 0.7707: the zero is in gate and sleeve, and adds up. Of another gauge √(0.36² + 0.62²) = 0.7169.</remarks>
    [Theory]
    [InlineData("one", 0.7707)]
    [InlineData("another", 0.7169)]
    public void The_zero_of_the_gauge_that_read_gate_and_sleeve_counts_in_both(string ofSleeve, double u)
    {
        Gauge gauge = Boats.UsualGauge with { Name = "one", Zero = GaugeZero.Assumed(Angle.FromDegrees(0.2)) };
        var sleeve = new OarFigure(0, Math.Sqrt((0.62 * 0.62) - (0.2 * 0.2)), [new("gauge/" + ofSleeve, -1, 0.2)]);

        OarSeating seating = OarSeating.Of([(Four[0], Estimate.FromDegrees(4, 0.36))], [new Oar("s1", "s1", Four[0].Side, Sleeve: sleeve)], _ => [gauge]);

        // Half of the last digit written down.
        Assert.Equal(u, Assert.Single(seating.Seats).Blade.U.Degrees, 0.00005);
    }

    private static OarSeating Of(double[] gates, (string Key, Side Side, double Sleeve)[] oars, params Oar[] others) => OarSeating.Of(
        [.. gates.Select((g, i) => (Four[i], Estimate.FromDegrees(g, 0.3)))],
        [.. oars.Select(o => new Oar(o.Key, o.Key, o.Side, Sleeve: Figure(o.Sleeve))), .. others],
        _ => []);

    private static OarFigure Figure(double value) => new(value, 0.4, []);

    private static double Variance(double[] values) => values.Sum(v => Math.Pow(v - values.Average(), 2));
}
