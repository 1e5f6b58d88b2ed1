using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Tests.Mending;

public class RecheckTests
{
    private static readonly GatePlace Gate = new(Faulty.Seat, Side.Port);

    /// <summary>A pin that leaned out 3°, and its washers.</summary>
    private static readonly Remedy Washers =
        Faulty.Remedy(Faulty.Gate(GateState.FromDegrees(4, 0, 3)), Cause.PinOut, RemedyKind.PlateWasher);

    /// <remarks>
    /// Scull, 62° and −43°: with the pin 3° out a gate of 4° reads 6.6, 4.0, 2.0; upright 4, 4, 4; sent the wrong way,
    /// 6° out, 9.3, 4.0, −0.1 (lean × sine, first order).
    /// </remarks>
    [Theory]
    [InlineData(4, 4, 4, RecheckOutcome.Mended)]
    [InlineData(4.5, 4, 3.5, RecheckOutcome.Mended)]
    [InlineData(6.5, 4, 2, RecheckOutcome.NotMended)]
    [InlineData(7, 4.5, 2, RecheckOutcome.NotMended)]
    [InlineData(9, 4, 0, RecheckOutcome.Otherwise)]
    [InlineData(2, 2, 2, RecheckOutcome.Otherwise)]
    [InlineData(6.5, 6.5, 6.5, RecheckOutcome.Otherwise)]
    public void A_gate_read_again_is_mended_as_before_or_neither(double atCatch, double abeam, double atFinish, RecheckOutcome outcome)
    {
        Recheck recheck = Judge(Read(new HullLevel.Read(HullAttitude.Level), atCatch, abeam, atFinish));

        Assert.Equal(outcome, recheck.Outcome);
        Assert.Equal(1, recheck.Mended + recheck.NotMended + recheck.Otherwise, 1e-12);
        Assert.True(Probability(recheck) > 0.8, $"{recheck}");
    }

    /// <remarks>Abeam a lean out cannot be seen: before and after are the same there, and the odds stay 8 to 1.</remarks>
    [Fact]
    public void A_reading_that_cannot_tell_leaves_the_odds_as_they_were()
    {
        Recheck recheck = Judge(Read(new HullLevel.Read(HullAttitude.Level), null, 4, null));

        Assert.Equal(8, recheck.Mended / recheck.NotMended, 1.0);
    }

    /// <summary>
    /// Three readings that are all too high by as much are what an unread level or zero does; as much in turn up, down
    /// and up is not. Readings taken each by itself would call the two alike.
    /// </summary>
    [Fact]
    public void Readings_are_judged_together_with_what_they_share()
    {
        var byEye = new HullLevel.ByEye();
        Recheck together = Judge(Read(byEye, 4.8, 4.8, 4.8));
        Recheck apart = Judge(Read(byEye, 4.8, 3.2, 4.8));

        Assert.True(together.Mended > 0.9, $"{together}");
        Assert.True(apart.Mended < together.Mended - 0.3, $"{apart}");
    }

    [Fact]
    public void A_better_level_makes_surer()
    {
        Recheck byEye = Judge(Read(new HullLevel.ByEye(), 5.2, 5.2, 5.2));
        Recheck read = Judge(Read(new HullLevel.Read(HullAttitude.Level), 5.2, 5.2, 5.2));

        Assert.True(read.Otherwise > byEye.Otherwise + 0.1, $"{byEye} {read}");
    }

    [Fact]
    public void A_gate_that_was_not_read_again_is_refused()
    {
        CorrectedReadings other = Read(new HullLevel.ByEye(), new GatePlace(1, Side.Port), 4, 4, 4);

        ArgumentException error = Assert.Throws<ArgumentException>(() => Judge(other));
        Assert.StartsWith("seat 3 port was not read again.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_gates_readings_decide_nothing()
    {
        MeasuringSettings settings = MeasuringSettings.Default;
        var lie = new BoatLie(Lie.Upright, new HullLevel.Read(HullAttitude.Level));
        Reading One(GatePlace gate, double shown) => new(
            ReadItem.Gate, gate, settings.Scull.Point(Station.Catch), Angle.FromDegrees(shown), lie, settings.GaugeNamed("gauge"));

        Recheck alone = Judge(CorrectedReadings.Of([One(Gate, 4)], settings));
        Recheck among = Judge(CorrectedReadings.Of([One(Gate, 4), One(new(1, Side.Port), 9)], settings));

        Assert.Equal(alone, among);
    }

    /// <remarks>The three densities written out for one reading: prior 0.8, 0.1, 0.1, anywhere 2.5° each unknown.</remarks>
    [Fact]
    public void One_reading_is_weighed_by_three_normal_densities()
    {
        const double Shown = 5;
        CorrectedReadings read = Read(new HullLevel.Read(HullAttitude.Level), Shown, null, null);
        OarAngle at = MeasuringSettings.Default.Scull.At(Station.Catch);
        (double sine, double cosine) = Math.SinCos(at.Angle.Radians);
        double anywhere = 2.5 * 2.5 * (1 + (cosine * cosine) + (sine * sine));
        double[] weights =
        [
            0.8 * Density(Washers.After!, 0),
            0.1 * Density(Washers.Before!, 0),
            0.1 * Density(Washers.After!, anywhere),
        ];

        Recheck recheck = Judge(read);

        Assert.Equal(weights[0] / weights.Sum(), recheck.Mended, 1e-9);
        Assert.Equal(weights[1] / weights.Sum(), recheck.NotMended, 1e-9);

        double Density(GateBelief belief, double more)
        {
            double sd = Math.Sqrt(read.Covariance(0, 0) + belief.PitchVariance(at) + more);
            return Normal.Density((Shown - belief.PitchAt(at).Degrees) / sd) / sd;
        }
    }

    private static double Probability(Recheck recheck) => recheck.Outcome switch
    {
        RecheckOutcome.Mended => recheck.Mended,
        RecheckOutcome.NotMended => recheck.NotMended,
        _ => recheck.Otherwise,
    };

    private static Recheck Judge(CorrectedReadings readings) => Recheck.Judge(Washers.Before!, Washers.After!, readings);

    private static CorrectedReadings Read(HullLevel level, params double?[] shown) => Read(level, Gate, shown);

    private static CorrectedReadings Read(HullLevel level, GatePlace gate, params double?[] shown)
    {
        MeasuringSettings settings = MeasuringSettings.Default;
        var lie = new BoatLie(Lie.Upright, level);
        return CorrectedReadings.Of(
            [.. Stations.All.Where(s => shown[(int)s] is not null).Select(s => new Reading(
                ReadItem.Gate, gate, settings.Scull.Point(s), Angle.FromDegrees(shown[(int)s]!.Value), lie, settings.GaugeNamed("gauge")))],
            settings);
    }
}
