using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Simulating;
using Gatewright.Core.Tests.Simulating;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>What is told of stations that were not read.</summary>
public sealed class PredictionTests
{
    /// <summary>
    /// Boats drawn from the prior; the true pitch where it was not read, against the forecast. Gates of one boat share
    /// its level and gauge, so 800 boats count for less than their gates; in trials with other seeds the shares move by half a
    /// per cent.
    /// </summary>
    [Theory]
    [InlineData("catch finish")]
    [InlineData("abeam")]
    public void A_forecasts_interval_holds_the_true_pitch_as_often_as_it_says(string stations)
    {
        var plan = new BoatPlan(BoatClass.Parse("4-"))
        {
            Stations = [.. Stations.All.Where(s => stations.Split(' ').Contains(s.Word()))],
        };
        Draws draws = SeededDraws.Of(3);
        (int In50, int In90, int All) counts = default;
        for (int i = 0; i < SeededDraws.Boats(1500); i++)
        {
            TrueBoat boat = BoatDraw.FromPrior(plan, draws);
            Diagnosis diagnosis = Boats.Diagnose(new Reader(boat, plan, draws).Round("boat"));
            foreach (GatePlace gate in plan.Gates)
            {
                foreach (Station unread in Stations.All.Except(plan.Stations))
                {
                    OarAngle at = MeasuringSettings.Default.Sweep.At(unread);
                    double truth = PitchGeometry.At(at, boat.Gates[gate], gate.Side).Degrees;
                    double above = diagnosis.At(gate, at).Above(truth);
                    counts.All++;
                    counts.In50 += above is > 0.25 and < 0.75 ? 1 : 0;
                    counts.In90 += above is > 0.05 and < 0.95 ? 1 : 0;
                }
            }
        }

        Assert.Equal(0.5, (double)counts.In50 / counts.All, 0.03);
        Assert.Equal(0.9, (double)counts.In90 / counts.All, 0.015);
    }

    /// <summary>What is told of a gate's own unknowns is as right as of its pitch.</summary>
    [Fact]
    public void A_gates_state_lies_within_its_u_as_often_as_a_mixture_of_normals_does()
    {
        var plan = new BoatPlan(BoatClass.Parse("4-"));
        Draws draws = SeededDraws.Of(4);
        double squares = 0;
        int count = 0;
        for (int i = 0; i < SeededDraws.Boats(1500); i++)
        {
            TrueBoat boat = BoatDraw.FromPrior(plan, draws);
            foreach (GateDiagnosis gate in Boats.Diagnose(new Reader(boat, plan, draws).Round("boat")).Gates)
            {
                GateState truth = boat.Gates[gate.Gate];
                squares += Squared(gate.GatePitch, truth.GatePitch.Degrees)
                    + Squared(gate.LeanAft, truth.Pin.Aft.Degrees)
                    + Squared(gate.LeanOut, truth.Pin.Out.Degrees);
                count += 3;
            }
        }

        // The mean square of standardised errors is 1 whatever the mixture; 1 ± 0.02 over 18,000, the tails being heavy.
        Assert.Equal(1, squares / count, 0.06);
    }

    private static double Squared(Estimate estimate, double truth) =>
        Math.Pow((truth - estimate.Value.Degrees) / estimate.U.Degrees, 2);

    [Fact]
    public void A_station_that_was_read_is_forecast_near_its_reading()
    {
        Diagnosis diagnosis = Boats.Diagnose(Boats.Eight(Stations.All, (seat, _) => seat == 5 ? 2 : 4));
        Assert.Equal(2, diagnosis.At(Boats.Gate(5), OarAngle.FromDegrees(0)).Mean, 0.3);
        Assert.Equal(4, diagnosis.At(Boats.Gate(4), OarAngle.FromDegrees(0)).Mean, 0.3);
    }

    /// <summary>Away from where it was read a gate is less well known.</summary>
    [Fact]
    public void A_forecast_widens_away_from_what_was_read()
    {
        Diagnosis diagnosis = Boats.Diagnose(Boats.Eight([Station.Abeam], (_, _) => 4));
        double abeam = diagnosis.At(Boats.Gate(4), OarAngle.FromDegrees(0)).Sd;
        double atCatch = diagnosis.At(Boats.Gate(4), OarAngle.FromDegrees(55)).Sd;
        Assert.True(atCatch > abeam);
    }
}
