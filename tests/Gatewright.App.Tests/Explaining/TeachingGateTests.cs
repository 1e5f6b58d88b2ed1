using Gatewright.App.Explaining;
using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.App.Tests.Explaining;

public class TeachingGateTests
{
    private static readonly StationAngles Sweep = MeasuringSettings.Default.Sweep;

    /// <summary>First order and exact differ by less than 0.04° within these leans; what a lesson says must be larger.</summary>
    private const double Near = 0.05;

    [Fact]
    public void A_true_gate_shows_its_own_pitch_everywhere() =>
        Assert.All(Gate("true").Curve(Sweep), p => Assert.Equal(4, p.Pitch.Value.Degrees, Near));

    [Fact]
    public void Outward_lean_adds_at_the_catch_and_takes_away_at_the_finish()
    {
        TeachingGate gate = Gate("out");
        Assert.True(Shown(gate, 55) > 5.5);
        Assert.True(Shown(gate, -35) < 3);
    }

    [Fact]
    public void An_insert_adds_the_same_everywhere_and_a_lean_aft_most_abeam()
    {
        Assert.Equal(Shown(Gate("insert"), 55), Shown(Gate("insert"), 0), Near);
        Assert.Equal(Shown(Gate("insert"), 0), Shown(Gate("aft"), 0), Near);
        Assert.True(Shown(Gate("aft"), 55) < Shown(Gate("aft"), 0) - 0.5);
    }

    [Fact]
    public void A_rolled_hull_has_opposite_signs_on_the_two_sides()
    {
        TeachingGate gate = Gate("rolled");
        double port = gate.Shown(Side.Port, Lie.Upright) - 4;
        double starboard = gate.Shown(Side.Starboard, Lie.Upright) - 4;
        Assert.True(port > 1);
        Assert.Equal(-port, starboard, 2 * Near);
    }

    [Fact]
    public void The_middle_of_upright_and_upside_down_is_true()
    {
        TeachingGate gate = Gate("turned");
        double upright = gate.Shown(Side.Port, Lie.Upright);
        double inverted = gate.Shown(Side.Port, Lie.Inverted);
        Assert.True(upright - inverted > 2.5);
        Assert.Equal(4, (upright + inverted) / 2, Near);
    }

    [Fact]
    public void A_slipped_sleeve_is_seen_on_the_blade_alone()
    {
        TeachingGate gate = Gate("sleeve");
        Assert.Equal(4, gate.Scene.Face.Degrees, Near);
        Assert.Equal(2, gate.Scene.Blade.Degrees, Near);
    }

    [Fact]
    public void The_diving_blade_is_good_at_the_catch_and_below_nothing_at_the_finish()
    {
        TeachingGate gate = Gate("dives");
        Assert.InRange(Shown(gate, 55), 3, 5);
        Assert.True(gate.Scene.Blade.Degrees < 0);
    }

    [Fact]
    public void Lessons_have_names_of_their_own() => Assert.Equal(Lesson.All.Count, Lesson.All.Select(l => l.Name).Distinct().Count());

    private static TeachingGate Gate(string lesson) => Lesson.All.Single(l => l.Name == lesson).Gate;

    private static double Shown(TeachingGate gate, double angle) => (gate with { OarAngle = angle }).Now.Pitch.Value.Degrees;
}
