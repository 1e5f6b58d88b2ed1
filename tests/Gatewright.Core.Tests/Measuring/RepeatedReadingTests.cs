using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Measuring;

[Properties(Arbitrary = [typeof(BoatCases)])]
public class RepeatedReadingTests
{
    /// <summary>
    /// Gelman et al., Bayesian Data Analysis, third edition, Table 5.2: eight schools, effects with standard errors;
    /// pooled mean 7.7, variance 16.6. Eight gauges of which nothing is uncertain but their repeatability.
    /// </summary>
    [Fact]
    public void Readings_of_different_worth_pool_as_the_eight_schools_do()
    {
        (double Effect, double Error)[] schools =
            [(28, 15), (8, 10), (-3, 16), (7, 11), (-1, 9), (1, 11), (18, 10), (12, 18)];
        var exact = new MeasuringSettings { HeldAbeamU = Angle.Zero, LevelReadU = Angle.Zero };
        CorrectedPitch pooled = Assert.Single(CorrectedReadings.Of(
            [
                .. schools.Select((s, i) => Taken.Gate(
                    Taken.Seat(1), Station.Abeam, s.Effect, Taken.Read(Lie.Upright, 0, 0), Taken.GaugeOf($"school {i}", 0, s.Error, 0, 0))),
            ],
            exact).Pitches);

        Close.To(7.7, pooled.Pitch.Degrees, 0.05);
        Close.To(16.6, pooled.Budget.Variance, 0.05);

        // Recomputed in full; the trace of noise that pooling adds is worth 1e-9 of it.
        Close.To(7.68562, pooled.Pitch.Degrees, 0.000005);
        Close.To(16.58053, pooled.Budget.Variance, 0.000005);
    }

    [Fact]
    public void Within_one_lying_repeats_pool_to_their_mean_and_only_their_noise_shrinks()
    {
        CorrectedPitch pooled = Pooled([3, 3.5, 4, 3.5], Station.Catch);

        Close.To(3.5, pooled.Pitch.Degrees, 1e-12);
        Assert.Equal(4, pooled.Repeats);
        Close.To(
            [0.0721688, 0.1, 0.0218166, 0.2, 0.2],
            [pooled.Budget.Resolution, pooled.Budget.Repeatability, pooled.Budget.HeldAngle, pooled.Budget.Level, pooled.Budget.GaugeZero],
            5e-8);
    }

    [Fact]
    public void Repeats_of_one_value_pool_to_that_very_value() =>
        Assert.Equal(3.3, Pooled([3.3, 3.3, 3.3], Station.Catch).Pitch.Degrees);

    [Fact]
    public void A_boat_read_level_outweighs_the_same_boat_read_by_eye()
    {
        var read = Taken.Read(Lie.Upright, 0, 0);
        CorrectedPitch pooled = Assert.Single(CorrectedReadings.Of(
            [Taken.Gate(Taken.Seat(1), Station.Abeam, 3, Taken.ByEye), Taken.Gate(Taken.Seat(1), Station.Abeam, 4, read)],
            Taken.Settings).Pitches);

        // Weights 1/(0.0609095 + 0.49) and 1/(0.0609095 + 0.01).
        Close.To(3.88596, pooled.Pitch.Degrees, 0.000005);
    }

    /// <summary>Three by eye share one error of level: weighed singly they would spoil the fourth that was read level.</summary>
    [Fact]
    public void Repeats_that_share_their_error_do_not_outvote_a_better_one()
    {
        Reading better = Taken.Gate(Taken.Seat(1), Station.Abeam, 4, Taken.Read(Lie.Upright, 0, 0));
        Reading byEye = Taken.Gate(Taken.Seat(1), Station.Abeam, 3, Taken.ByEye);

        double alone = Variance([better]);
        double together = Variance([better, byEye, byEye, byEye]);

        // Noise and level of the one 0.0709095, of the three's mean 0.0609095/3 + 0.49 = 0.5103032: 1/(1/a + 1/b) + 0.04.
        Close.To(0.1109095, alone, 5e-8);
        Close.To(0.1022585, together, 5e-7);
    }

    [Property]
    public void One_more_reading_never_makes_a_pitch_less_certain(BoatCase boat)
    {
        Reading[] faces =
        [
            .. boat.Readings.Where(r => r.Item == ReadItem.Gate)
                .Select(r => r with { Gate = Taken.Seat(1), At = Taken.Settings.Sweep.Point(Station.Catch) }),
        ];

        for (int count = 2; count <= faces.Length; count++)
        {
            Assert.True(Variance(faces[..count]) <= Variance(faces[..(count - 1)]) + 1e-9);
        }
    }

    [Fact]
    public void Readings_said_to_be_exact_pool_to_their_mean()
    {
        Gauge exact = Taken.GaugeOf("exact", 0, 0, 0, 0);
        var settings = new MeasuringSettings { HeldAbeamU = Angle.Zero, LevelReadU = Angle.Zero };
        BoatLie level = Taken.Read(Lie.Upright, 0, 0);
        Reading[] readings =
            [Taken.Gate(Taken.Seat(1), Station.Abeam, 3, level, exact), Taken.Gate(Taken.Seat(1), Station.Abeam, 4, level, exact)];

        CorrectedPitch all = Assert.Single(CorrectedReadings.Of(readings, settings).Pitches);
        CorrectedPitch butTheLevel = Assert.Single(CorrectedReadings.Of(readings, settings with { LevelReadU = Angle.FromDegrees(0.1) }).Pitches);

        Close.To(3.5, all.Pitch.Degrees, 1e-12);
        Assert.Equal(0, all.Budget.Variance);
        Close.To(3.5, butTheLevel.Pitch.Degrees, 1e-6);
        Close.To(0.1, butTheLevel.Budget.CombinedDegrees, 1e-12);
        Assert.True(all.RepeatsDisagree && butTheLevel.RepeatsDisagree);
    }

    // 1.959964 · √2 · 0.2504739 at the catch, · 0.2467985 abeam: one thousandth either side.
    [Theory]
    [InlineData(Station.Catch, 0.694, false)]
    [InlineData(Station.Catch, 0.695, true)]
    [InlineData(Station.Finish, -0.694, false)]
    [InlineData(Station.Finish, -0.695, true)]
    [InlineData(Station.Abeam, 0.684, false)]
    [InlineData(Station.Abeam, 0.685, true)]
    public void Repeats_further_apart_than_their_noise_allows_disagree(Station station, double apart, bool disagree) =>
        Assert.Equal(disagree, Pooled([4, 4 + apart], station).RepeatsDisagree);

    // Two lyings, each with its level read to 0.1° both ways: √(2 · 0.2504739² + 2 · 0.1²) · 1.959964 = 0.74755.
    [Theory]
    [InlineData(0.747, false)]
    [InlineData(0.748, true)]
    public void Between_two_lyings_the_levels_are_allowed_for(double apart, bool disagree)
    {
        CorrectedPitch pooled = Assert.Single(CorrectedReadings.Of(
            [
                Taken.Gate(Taken.Seat(1), Station.Catch, 4, Taken.Read(Lie.Upright, 0, 0)),
                Taken.Gate(Taken.Seat(1), Station.Catch, 4 + apart, Taken.Read(Lie.Inverted, 0, 0)),
            ],
            Taken.Settings).Pitches);

        Assert.Equal(disagree, pooled.RepeatsDisagree);
    }

    // Two gauges, each with a zero to 0.2°: √(2 · 0.2467985² + 2 · 0.2²) · 1.959964 = 0.88050.
    [Theory]
    [InlineData(0.880, false)]
    [InlineData(0.881, true)]
    public void Between_two_gauges_their_zeros_are_allowed_for(double apart, bool disagree)
    {
        CorrectedPitch pooled = Assert.Single(CorrectedReadings.Of(
            [
                Taken.Gate(Taken.Seat(1), Station.Abeam, 4),
                Taken.Gate(Taken.Seat(1), Station.Abeam, 4 + apart, gauge: Taken.Settings.GaugeNamed("another")),
            ],
            Taken.Settings).Pitches);

        Assert.Equal(disagree, pooled.RepeatsDisagree);
    }

    [Fact]
    public void Any_two_of_several_may_disagree()
    {
        Assert.False(Pooled([4, 4.5, 4, 4.5], Station.Catch).RepeatsDisagree);
        Assert.True(Pooled([4, 4.5, 4.5, 5], Station.Catch).RepeatsDisagree);
    }

    /// <remarks>
    /// Studentised range, 95 % points for infinite degrees of freedom (from memory): 3.86 for five, 3.31 for three. Times the noise of one
    /// reading abeam, 0.2467985: 0.9526 and 0.8169; the table's second decimal is worth 0.0012.
    /// </remarks>
    [Theory]
    [InlineData(0.951, false)]
    [InlineData(0.955, true)]
    public void Five_readings_may_lie_further_apart_than_two(double apart, bool disagree)
    {
        Assert.Equal(disagree, Pooled([4, 4 + (0.4 * apart), 4 + (0.5 * apart), 4 + (0.6 * apart), 4 + apart], Station.Abeam).RepeatsDisagree);
        Assert.True(Pooled([4, 4 + (0.5 * apart), 4 + apart], Station.Abeam).RepeatsDisagree);
    }

    /// <summary>However often a gate is read, of a hundred gates with nothing wrong five are queried by chance.</summary>
    /// <remarks>Of 4,000 series 200 ± 4 standard deviations of 13.8. By the limit for two, 14 and 29 in a hundred would be.</remarks>
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void Chance_alone_makes_readings_disagree_in_one_series_of_twenty(int count)
    {
        const double Noise = 0.2467985;
        var random = new Random(20260504);
        int queried = 0;
        for (int series = 0; series < 4000; series++)
        {
            queried += Pooled([.. Enumerable.Range(0, count).Select(_ => 4 + (Noise * Drawn(random)))], Station.Abeam).RepeatsDisagree ? 1 : 0;
        }

        Assert.InRange(queried, 145, 255);
    }

    /// <summary>Two by eye may differ by 2.0 as they lie; four read level differ by more than their noise explains.</summary>
    [Fact]
    public void The_pair_that_disagrees_most_for_its_own_uncertainty_is_told()
    {
        BoatLie level = Taken.Read(Lie.Upright, 0, 0);
        CorrectedPitch pooled = Assert.Single(CorrectedReadings.Of(
            [
                Taken.Gate(Taken.Seat(1), Station.Abeam, 2.9, Taken.ByEye),
                .. new[] { 4.0, 4.1, 5.2 }.Select(v => Taken.Gate(Taken.Seat(1), Station.Abeam, v, level)),
            ],
            Taken.Settings).Pitches);

        // √2 · 0.2467985: the level they share drops out.
        Close.To(1.2, pooled.RepeatsApart!.Value.Value.Degrees, 1e-9);
        Close.To(0.3490258, pooled.RepeatsApart!.Value.U.Degrees, 5e-7);
    }

    private static double Drawn(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static double Variance(Reading[] readings) =>
        Assert.Single(CorrectedReadings.Of(readings, Taken.Settings).Pitches).Budget.Variance;

    private static CorrectedPitch Pooled(double[] values, Station station) => Assert.Single(CorrectedReadings.Of(
        [.. values.Select(value => Taken.Gate(Taken.Seat(1), station, value))], Taken.Settings).Pitches);
}
