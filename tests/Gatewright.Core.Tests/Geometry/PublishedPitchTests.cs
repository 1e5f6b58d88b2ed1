using Gatewright.Core.Geometry;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Geometry;

/// <summary>What the trade has in print about leaning pins, against the geometry.</summary>
public class PublishedPitchTests
{
    /// <summary>Half of the last digit that is given.</summary>
    private const double TwoDecimals = 0.005;

    /// <summary>First-order values are given to three decimals; the exact ones differ from them in the third.</summary>
    private const double FirstOrder = 0.002;

    // Derived from the geometry, not published: 4° in the gate, 1° of lean out, level boat.
    [Theory]
    [InlineData(60, 4.87)]
    [InlineData(0, 4.00)]
    [InlineData(-35, 3.43)]
    public void Four_in_the_gate_and_one_out_shows(double at, double pitch)
    {
        var gate = GateState.FromDegrees(4, 0, 1);

        Close.To(pitch, PitchGeometry.At(OarAngle.FromDegrees(at), gate, Side.Port).Degrees, TwoDecimals);
        Close.To(pitch, PitchGeometry.At(OarAngle.FromDegrees(at), gate, Side.Starboard).Degrees, TwoDecimals);
    }

    // Derived: sines of the oar angles. "About two thirds of the lean each way" (rec.sport.rowing archive) is sin 42°.
    [Theory]
    [InlineData(60, 0.866)]
    [InlineData(42, 0.669)]
    [InlineData(0, 0)]
    [InlineData(-35, -0.574)]
    public void A_degree_of_lean_out_adds_the_sine_of_the_oar_angle(double at, double added) =>
        Close.To(added, Added(GateState.FromDegrees(4, 0, 1), at), FirstOrder);

    [Theory]
    [InlineData(60, 0.5)]
    [InlineData(0, 1)]
    [InlineData(-35, 0.819)]
    public void A_degree_of_lean_aft_adds_the_cosine_of_the_oar_angle(double at, double added) =>
        Close.To(added, Added(GateState.FromDegrees(4, 1, 0), at), FirstOrder);

    /// <summary>
    /// "One degree of outward lean gives +1° at the catch and −1° at the finish" (Ready All Row, An Introduction to
    /// Rigging, part 3: Pitch, 2013) would need the oar at right angles to where it is.
    /// </summary>
    [Theory]
    [InlineData(55)]
    [InlineData(62)]
    [InlineData(70)]
    public void The_common_rule_of_one_degree_each_way_is_wrong(double atCatch)
    {
        var gate = GateState.FromDegrees(4, 0, 1);

        Assert.InRange(Added(gate, atCatch), 0.80, 0.95);
        Assert.InRange(Added(gate, -35), -0.58, -0.56);
        Assert.InRange(Added(gate, -43), -0.69, -0.67);
    }

    private static double Added(GateState gate, double at) =>
        PitchGeometry.At(OarAngle.FromDegrees(at), gate, Side.Port).Degrees - gate.GatePitch.Degrees;
}
