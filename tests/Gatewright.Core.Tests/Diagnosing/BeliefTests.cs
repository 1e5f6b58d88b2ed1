using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>What a gate is believed to be over all stories, as one mean and one covariance.</summary>
public sealed class BeliefTests
{
    public static TheoryData<string> Samples => [.. SampleBoats.All.Keys];

    /// <summary>The forecast averages the pitch itself, story by story: the covariance must lead to the same figures.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void A_pitch_anywhere_in_the_stroke_follows_from_it(string name)
    {
        (BoatReadings boat, BoatContext context) = SampleBoats.All[name];
        Diagnosis diagnosis = Boats.Diagnose(boat, context);
        foreach (GatePlace gate in diagnosis.Gates.Select(g => g.Gate))
        {
            GateBelief belief = diagnosis.Belief(gate);
            foreach (OarAngle at in new[] { 55.0, 20, 0, -35 }.Select(OarAngle.FromDegrees))
            {
                PitchSlopes slopes = PitchSlopes.At(at, gate.Side, Lie.Upright);
                double mean = belief.Mean.GatePitch.Degrees
                    + (slopes.Aft * belief.Mean.Pin.Aft.Degrees) + (slopes.Out * belief.Mean.Pin.Out.Degrees);
                var forecast = diagnosis.At(gate, at);

                // Sums of a few hundred stories: what is left is rounding.
                Assert.Equal(forecast.Mean, mean, 1e-8);
                Assert.Equal(forecast.Sd, Math.Sqrt(belief.Covariance.Variance([1, slopes.Aft, slopes.Out])), 1e-6);
            }
        }
    }

    [Fact]
    public void Its_own_figures_are_those_told_of_the_gate()
    {
        Diagnosis diagnosis = Boats.Diagnose(SampleBoats.All["an eight read at three stations"].Boat);
        foreach (GateDiagnosis told in diagnosis.Gates)
        {
            GateBelief belief = diagnosis.Belief(told.Gate);
            Assert.Equal(told.LeanOut.Value.Degrees, belief.Mean.Pin.Out.Degrees, 1e-12);
            Assert.Equal(told.LeanOut.U.Degrees, belief.Covariance.U(2), 1e-12);
            Assert.Equal(told.GatePitch.U.Degrees, belief.Covariance.U(0), 1e-12);
        }
    }

    /// <summary>Abeam a gate's pitch is γ + a: reading it there says little of either alone, and they are known together.</summary>
    [Fact]
    public void Gate_pitch_and_lean_aft_go_against_each_other()
    {
        Diagnosis diagnosis = Boats.Diagnose(Boats.Eight([Station.Abeam], (seat, _) => seat == 3 ? 1 : 4));
        Assert.True(diagnosis.Belief(Boats.Gate(3)).Covariance.Correlation(0, 1) < -0.5);
    }

    [Fact]
    public void Of_a_gate_without_a_reading_nothing_is_believed() =>
        Assert.Throws<ArgumentException>(() => Boats.Diagnose(Boats.Eight([Station.Abeam], (_, _) => 4)).Belief(Boats.Port(1)));
}
