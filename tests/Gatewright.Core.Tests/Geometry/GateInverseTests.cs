using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Geometry;

[Properties(Arbitrary = [typeof(Domain)])]
public class GateInverseTests
{
    [Property]
    public void It_gives_back_the_gate_from_its_three_stations(FaceCase face) =>
        AssertGivesBack(face, [55, 0, -35], 1e-12);

    [Property]
    public void It_gives_back_the_gate_from_any_three_oar_angles_30_degrees_apart(FaceCase face)
    {
        double at = face.At.Degrees;

        AssertGivesBack(face, [at - 30, at, at + 30], 1e-12);
    }

    /// <summary>A degree apart, 1 and cos θ differ by a part in 7000: rounding at 1e-14 becomes some 1e-10.</summary>
    [Property]
    public void It_gives_back_the_gate_from_three_oar_angles_a_degree_apart(FaceCase face)
    {
        double at = face.At.Degrees;

        AssertGivesBack(face, [at - 1, at, at + 1], 2e-10);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(30)]
    [InlineData(40)]
    public void It_gives_back_gates_far_beyond_the_trade(double lean)
    {
        var face = new FaceCase(GateState.FromDegrees(-10, lean, -lean), default, default, Side.Starboard, Lie.Inverted);

        AssertGivesBack(face, [55, 0, -35], 1e-11);
    }

    /// <summary>Of more than three pitches that no gate shows exactly, the answer leaves the least sum of squares.</summary>
    [Property(MaxTest = 20)]
    public void With_more_than_three_oar_angles_no_gate_near_by_fits_better(FaceCase face)
    {
        double[] off = [0.25, -0.25, 0, 0.25, -0.25];
        List<(OarAngle At, Pitch Pitch)> pitches = [.. Pitches(face, [60, 30, 0, -20, -45])
            .Zip(off, (p, more) => (p.At, Pitch.FromDegrees(p.Pitch.Degrees + more)))];

        GateState best = GateInverse.Solve(pitches, face.Side, face.Hull, face.Lie);

        double least = Squares(best);
        foreach ((double γ, double a, double o) in new[] { (1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1.0), (0, 0, -1) })
        {
            const double step = 1e-3;
            var near = GateState.FromDegrees(
                best.GatePitch.Degrees + (γ * step), best.Pin.Aft.Degrees + (a * step), best.Pin.Out.Degrees + (o * step));
            Assert.True(Squares(near) > least);
        }

        double Squares(GateState gate) => pitches.Sum(p =>
            Math.Pow(p.Pitch.Degrees - PitchGeometry.At(p.At, gate, face.Side, face.Hull, face.Lie).Degrees, 2));
    }

    [Fact]
    public void Pitches_at_fewer_than_three_oar_angles_are_refused()
    {
        var face = new FaceCase(GateState.FromDegrees(4, 0, 1), default, default, Side.Port, Lie.Upright);

        var error = Assert.Throws<ArgumentException>(() => GateInverse.Solve(Pitches(face, [55, 0, 55]), Side.Port));

        Assert.Equal(
            "A gate and its pin are three unknowns: pitches at three different oar angles are needed. (Parameter 'pitches')",
            error.Message);
        Assert.Throws<ArgumentException>(() => GateInverse.Solve([], Side.Port));
        Assert.Throws<ArgumentNullException>(() => GateInverse.Solve(null!, Side.Port));
    }

    [Fact]
    public void Pitches_that_no_gate_shows_are_refused()
    {
        (OarAngle, Pitch)[] pitches =
        [
            (OarAngle.FromDegrees(10), Pitch.FromDegrees(80)),
            (OarAngle.FromDegrees(0), Pitch.FromDegrees(-80)),
            (OarAngle.FromDegrees(-10), Pitch.FromDegrees(80)),
        ];

        var error = Assert.Throws<ArgumentException>(() => GateInverse.Solve(pitches, Side.Port));

        Assert.Equal("No gate with leans within 45° shows these pitches. (Parameter 'pitches')", error.Message);
    }

    private static void AssertGivesBack(FaceCase face, double[] angles, double tolerance)
    {
        GateState found = GateInverse.Solve(Pitches(face, angles), face.Side, face.Hull, face.Lie);

        Close.To(face.Gate.GatePitch.Degrees, found.GatePitch.Degrees, tolerance, "gate pitch");
        Close.To(face.Gate.Pin.Aft.Degrees, found.Pin.Aft.Degrees, tolerance, "aft");
        Close.To(face.Gate.Pin.Out.Degrees, found.Pin.Out.Degrees, tolerance, "out");
    }

    private static List<(OarAngle At, Pitch Pitch)> Pitches(FaceCase face, double[] angles) =>
        [.. angles.Select(OarAngle.FromDegrees).Select(at => (at, (face with { At = at }).Exact))];
}
