using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Judging;

/// <summary>What everybody in the trade who keeps boats knows: common practice, without a source.</summary>
public class CommonPracticeTests
{
    [Fact]
    public void Readings_of_4_5_and_3_2_and_4_in_one_boat_are_good_for_a_club() =>
        Assert.Equal(Verdict.Good, AtTheCatch(Standard.Club, 4.5, 3.2, 4).Verdict);

    [Fact]
    public void Readings_of_4_5_and_5_and_3_5_pass_for_a_club_and_are_too_mixed_to_race()
    {
        BoatVerdict race = AtTheCatch(Standard.Race, 4.5, 5, 3.5);

        Assert.Equal(Verdict.Good, AtTheCatch(Standard.Club, 4.5, 5, 3.5).Verdict);
        Assert.Equal(Verdict.Adjust, race.Verdict);
        Assert.Contains(race.Gates.SelectMany(g => g.Reasons), r => r.Kind == ReasonKind.Range && r.Verdict == Verdict.Adjust);
    }

    // "One to two degrees anywhere leaves too little margin: the part is removed and inspected."
    [Theory]
    [InlineData(1)]
    [InlineData(1.5)]
    [InlineData(2)]
    public void A_reading_of_one_to_two_at_the_catch_or_abeam_is_never_good(double pitch)
    {
        foreach (Reading reading in
            from station in new[] { Station.Catch, Station.Abeam }
            from lie in Levels
            select Taken.Gate(Taken.Seat(1), station, pitch, lie))
        {
            Assert.Equal(Verdict.Stop, Judged.Gate(Standard.Club, reading).Verdict);
            Assert.Equal(Verdict.Stop, Judged.Gate(Standard.Race, reading).Verdict);
        }
    }

    [Fact]
    public void Five_at_the_catch_falling_to_one_at_the_finish_leans_out_by_about_2_9_degrees()
    {
        MeasuringSettings settings = Taken.Settings;
        double atCatch = PitchSlopes.At(settings.Sweep.Catch, Side.Port, Lie.Upright).Out;
        double atFinish = PitchSlopes.At(settings.Sweep.Finish, Side.Port, Lie.Upright).Out;
        double lean = (5 - 1) / (atCatch - atFinish);

        Close.To(2.9, lean, 0.05);

        // And the exact geometry drops by 4 with such a lean, within what the first order leaves out.
        var leaning = GateState.FromDegrees(2.6, 0, lean);
        double drop = PitchGeometry.At(settings.Sweep.Catch, leaning, Side.Port).Degrees
            - PitchGeometry.At(settings.Sweep.Finish, leaning, Side.Port).Degrees;
        Close.To(4, drop, 0.04);
    }

    [Fact]
    public void Five_at_the_catch_falling_to_one_at_the_finish_is_never_good()
    {
        foreach (Standard standard in Standard.BuiltIn)
        {
            foreach (BoatLie lie in Levels)
            {
                GateVerdict gate = Judged.Gate(standard, 5, 3.5, 1, lie);

                Assert.NotEqual(Verdict.Good, gate.Verdict);
                Assert.Contains(gate.Reasons, r => r.Kind == ReasonKind.Drop);
            }
        }
    }

    [Theory]
    [InlineData(-0.5)]
    [InlineData(-2)]
    public void A_finish_that_is_negative_is_stop(double pitch)
    {
        foreach (BoatLie lie in Levels)
        {
            Assert.Equal(Verdict.Stop, Judged.Gate(Standard.Club, 3, 2.5, pitch, lie).Verdict);
        }
    }

    /// <summary>
    /// Equal at the catch and the finish, or slightly less at the finish, means a pin upright both ways: the leans that
    /// the three readings show are within their own uncertainty of none.
    /// </summary>
    [Theory]
    [InlineData(4.5, 4.5, 4.5)]
    [InlineData(4.5, 4.5, 4.25)]
    [InlineData(4.5, 4.4, 4.3)]
    [InlineData(4.5, 4.25, 4.5)]
    public void Equal_or_slightly_less_at_the_finish_is_an_upright_pin(double atCatch, double abeam, double atFinish)
    {
        (Estimate aft, Estimate @out) = Leans(atCatch, abeam, atFinish);

        Assert.InRange(Math.Abs(aft.Value.Degrees), 0, aft.U.Degrees);
        Assert.InRange(Math.Abs(@out.Value.Degrees), 0, @out.U.Degrees);
    }

    /// <summary>A whole step of the gauge less is still within twice the uncertainty.</summary>
    [Fact]
    public void Half_a_degree_less_at_the_finish_may_still_be_an_upright_pin()
    {
        (Estimate aft, Estimate @out) = Leans(4.5, 4.5, 4);

        Assert.InRange(Math.Abs(aft.Value.Degrees), 0, 2 * aft.U.Degrees);
        Assert.InRange(@out.Value.Degrees, @out.U.Degrees, 2 * @out.U.Degrees);
    }

    [Fact]
    public void Five_three_and_a_half_and_one_is_not_an_upright_pin()
    {
        (_, Estimate @out) = Leans(5, 3.5, 1);

        Assert.True(@out.Value.Degrees > 5 * @out.U.Degrees);
    }

    private static BoatLie[] Levels => [Taken.Read(Lie.Upright, 0, 0), Taken.Level, Taken.ByEye];

    private static BoatVerdict AtTheCatch(Standard standard, params double[] pitches) => Judged.Boat(
        standard, [.. pitches.Select((pitch, i) => Taken.Gate(Taken.Seat(i + 1), Station.Catch, pitch))]);

    /// <summary>The pin's leans from three corrected readings, their covariance carried through the inverse.</summary>
    private static (Estimate Aft, Estimate Out) Leans(double atCatch, double abeam, double atFinish)
    {
        var corrected = CorrectedReadings.Of(
            [
                Taken.Gate(Taken.Seat(1), Station.Catch, atCatch),
                Taken.Gate(Taken.Seat(1), Station.Abeam, abeam),
                Taken.Gate(Taken.Seat(1), Station.Finish, atFinish),
            ],
            Taken.Settings);
        double[] pitches = [.. corrected.Pitches.Select(p => p.Pitch.Degrees)];
        double[] leans = Solve(pitches);
        double[] jacobian = new double[6];
        const double step = 1e-4;
        for (int i = 0; i < 3; i++)
        {
            double[] moved = [.. pitches];
            moved[i] += step;
            double[] other = Solve(moved);
            (jacobian[i], jacobian[3 + i]) = ((other[0] - leans[0]) / step, (other[1] - leans[1]) / step);
        }

        CovarianceMatrix covariance = corrected.Covariances().Propagate(2, jacobian);
        return (Estimate.FromDegrees(leans[0], covariance.U(0)), Estimate.FromDegrees(leans[1], covariance.U(1)));

        double[] Solve(double[] shown)
        {
            PinLean pin = GateInverse.Solve(
                [.. corrected.Pitches.Zip(shown, (p, degrees) => (p.At.Angle, Pitch.FromDegrees(degrees)))], Side.Port).Pin;
            return [pin.Aft.Degrees, pin.Out.Degrees];
        }
    }
}
