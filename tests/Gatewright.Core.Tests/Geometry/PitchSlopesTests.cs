using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Geometry;

[Properties(Arbitrary = [typeof(Domain)])]
public class PitchSlopesTests
{
    [Property(MaxTest = 2000)]
    public void The_first_order_form_is_within_0_04_degrees_of_the_exact_one(FaceCase face) =>
        Close.To(face.Exact.Degrees, FirstOrder(face), 0.04);

    /// <summary>
    /// The figure that <see cref="PitchSlopes"/> states, found by walking the stated range: ends and middles of what
    /// bends little, every half degree of the oar.
    /// </summary>
    [Fact]
    public void The_largest_difference_from_the_exact_form_is_as_stated()
    {
        double largest = 0;
        foreach (FaceCase face in Walk())
        {
            largest = Math.Max(largest, Math.Abs(face.Exact.Degrees - FirstOrder(face)));
        }

        Close.To(0.0355, largest, 0.00005);
    }

    [Property]
    public void The_slopes_are_those_of_the_exact_form_about_an_upright_gate_on_a_level_hull(FaceCase face)
    {
        const double step = 1e-4;
        var slopes = PitchSlopes.At(face.At, face.Side, face.Lie);
        double Slope(GateState gate, HullAttitude hull) =>
            PitchGeometry.At(face.At, gate, face.Side, hull, face.Lie).Degrees / step;

        // A difference over 0.0001° is off by the square of the step, and by rounding: 1e-15 over 1e-4.
        Close.To(Slope(GateState.FromDegrees(0, step, 0), default), slopes.Aft, 1e-8);
        Close.To(Slope(GateState.FromDegrees(0, 0, step), default), slopes.Out, 1e-8);
        Close.To(Slope(default, HullAttitude.FromDegrees(step, 0)), slopes.BowHigh, 1e-8);
        Close.To(Slope(default, HullAttitude.FromDegrees(0, step)), slopes.PortLow, 1e-8);
    }

    [Fact]
    public void The_first_order_form_is_the_sum_of_its_terms()
    {
        var slopes = PitchSlopes.At(OarAngle.FromDegrees(60), Side.Starboard, Lie.Inverted);
        Pitch pitch = slopes.Pitch(
            GateState.FromDegrees(4, 0.5, 1), HullAttitude.FromDegrees(0.2, -0.4), SleeveError.FromDegrees(0.3));

        // 4 + 0.5·0.5 + 1·0.8660254 − (0.2·0.5 + (−1)·(−0.4)·0.8660254) + 0.3
        Close.To(4.96961524, pitch.Degrees, 5e-9);
    }

    private static double FirstOrder(FaceCase face) =>
        PitchSlopes.At(face.At, face.Side, face.Lie).Pitch(face.Gate, face.Hull).Degrees;

    private static IEnumerable<FaceCase> Walk() =>
        from gatePitch in new[] { -7.0, 0, 3.5, 7 }
        from aft in new[] { -3.0, -1.5, 0, 1.5, 3 }
        from @out in new[] { -3.0, -1.5, 0, 1.5, 3 }
        from bowHigh in new[] { -1.0, 0, 1 }
        from portLow in new[] { -1.0, 0, 1 }
        from half in Enumerable.Range(-100, 241)
        from side in new[] { Side.Port, Side.Starboard }
        select new FaceCase(
            GateState.FromDegrees(gatePitch, aft, @out),
            HullAttitude.FromDegrees(bowHigh, portLow),
            OarAngle.FromDegrees(half / 2.0),
            side,
            half % 2 == 0 ? Lie.Upright : Lie.Inverted);
}
