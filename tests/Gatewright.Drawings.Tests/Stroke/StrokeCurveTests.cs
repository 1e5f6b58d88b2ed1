using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Drawings.Stroke;

namespace Gatewright.Drawings.Tests.Stroke;

public class StrokeCurveTests
{
    private static readonly StationAngles Sweep = new(OarAngle.FromDegrees(60), OarAngle.FromDegrees(0), OarAngle.FromDegrees(-30));

    [Theory]
    [InlineData(Side.Port)]
    [InlineData(Side.Starboard)]
    public void It_runs_from_the_catch_to_the_finish_at_the_exact_pitch(Side side)
    {
        IReadOnlyList<CurvePoint> curve = StrokeCurve.Of(GateState.FromDegrees(4, 0, 1), new(3, new double[9]), side, Sweep);

        Assert.Equal(60, curve[0].At.Degrees);
        Assert.Equal(-30, curve[^1].At.Degrees);

        // The worked example of PitchGeometry at the catch; 4 + sin(−30°) to first order at the finish.
        Assert.Equal(4.87, curve[0].Pitch.Value.Degrees, 0.005);
        Assert.Equal(3.5, curve[^1].Pitch.Value.Degrees, 0.02);
        Assert.All(curve, p => Assert.Equal(PitchGeometry.At(p.At, GateState.FromDegrees(4, 0, 1), side).Degrees, p.Pitch.Value.Degrees));
    }

    [Fact]
    public void Its_uncertainty_is_propagated_with_what_goes_together()
    {
        // u² = 0.04 + 0.09 cos² + 0.25 sin² − 2 · 0.03 cos: at 60° 0.04 + 0.0225 + 0.1875 − 0.03 = 0.22.
        IReadOnlyList<CurvePoint> curve = StrokeCurve.Of(
            GateState.FromDegrees(4, 0, 0), new(3, [0.04, -0.03, 0, -0.03, 0.09, 0, 0, 0, 0.25]), Side.Port, Sweep);

        Assert.Equal(Math.Sqrt(0.22), curve[0].Pitch.U.Degrees, 9);
    }

    [Fact]
    public void The_catch_is_on_the_left_and_more_pitch_is_higher()
    {
        CurvePoint[] read = [new(Sweep.Catch, Estimate.FromDegrees(5, 0.3)), new(Sweep.Finish, Estimate.FromDegrees(2, 0.3))];
        var stroke = new StrokePitchGeometry([], read, Standard.Club, Sweep);

        Assert.True(stroke.At(read[0]).X < stroke.At(read[1]).X);
        Assert.True(stroke.At(read[0]).Y < stroke.At(read[1]).Y);
        (double low, double high) = stroke.Bar(read[0]);
        Assert.Equal(4 * 0.3 * Math.Abs(stroke.Y[1] - stroke.Y[0]), low - high, 9);
    }

    [Fact]
    public void Limits_and_floors_stand_where_the_standard_puts_them()
    {
        var stroke = new StrokePitchGeometry([], [], Standard.Club, Sweep);

        Assert.Equal(3, stroke.Limits.Count());
        Assert.All(stroke.Limits, at =>
        {
            StationLimits limits = Standard.Club.At(at.Station);
            Assert.Equal(stroke.Y[limits.Highest.Degrees], at.Within.Y, 9);
            Assert.Equal(stroke.Y[limits.Lowest.Degrees], at.Within.Bottom, 9);
            Assert.Equal(stroke.Y[limits.Floor.Degrees], at.Floor, 9);
            Assert.InRange(at.Floor, 0, StrokePitchGeometry.Height);
        });
    }
}
