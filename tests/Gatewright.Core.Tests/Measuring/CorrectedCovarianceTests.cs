using FsCheck.Xunit;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;
using MathNet.Numerics.LinearAlgebra;

namespace Gatewright.Core.Tests.Measuring;

/// <summary>What the pitches of one boat share: its level, its gauge, and nothing else.</summary>
[Properties(Arbitrary = [typeof(BoatCases)])]
public class CorrectedCovarianceTests
{
    /// <summary>
    /// J Σ Jᵀ by brute force: Σ every single error in turn, J from the first-order geometry written out here, repeats
    /// pooled by an inverse. Within 1e-8, since a trace of noise (1e-9 of the variance) is added before pooling.
    /// </summary>
    [Property(MaxTest = 300)]
    public void They_are_those_of_brute_force(BoatCase boat)
    {
        var corrected = CorrectedReadings.Of(boat.Readings, Taken.Settings);
        Matrix<double> expected = BruteForce(boat.Readings);
        CovarianceMatrix covariances = corrected.Covariances();

        Assert.Equal(expected.RowCount, covariances.Size);
        for (int i = 0; i < covariances.Size; i++)
        {
            Close.To(expected[i, i], corrected.Pitches[i].Budget.Variance, 1e-8, "budget");
            for (int j = 0; j < covariances.Size; j++)
            {
                Close.To(expected[i, j], covariances[i, j], 1e-8);
                Close.To(expected[i, j], corrected.Covariance(i, j), 1e-8);

                double difference = expected[i, i] + expected[j, j] - (2 * expected[i, j]);
                Close.To(difference, Math.Pow(corrected.Difference(i, j).U.Degrees, 2), 4e-8);
            }
        }
    }

    /// <summary>
    /// The slopes behind the covariances are those with which the corrected values really move when the level does:
    /// within 2 %, since they are taken about a level hull and an upright face.
    /// </summary>
    [Theory]
    [InlineData(Lie.Upright)]
    [InlineData(Lie.Inverted)]
    public void They_follow_the_corrected_values(Lie lie)
    {
        Gauge exact = Taken.GaugeOf("exact", 0, 0, 0, 0);
        double[] Pitches(double bowHigh, double portLow) =>
            [.. Corrected(bowHigh, portLow).Pitches.Select(p => p.Pitch.Degrees)];
        CorrectedReadings Corrected(double bowHigh, double portLow) => CorrectedReadings.Of(
            [
                .. from station in Stations.All
                   from side in new[] { Side.Port, Side.Starboard }
                   select Taken.Gate(Taken.Seat(1, side), station, 4, Taken.Read(lie, bowHigh, portLow), exact),
            ],
            Taken.Settings);

        const double step = 0.01;
        double[] byBow = [.. Pitches(step, 0).Zip(Pitches(-step, 0), (x, y) => (x - y) / (2 * step))];
        double[] byPort = [.. Pitches(0, step).Zip(Pitches(0, -step), (x, y) => (x - y) / (2 * step))];
        CorrectedReadings level = Corrected(0, 0);
        for (int i = 0; i < level.Pitches.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double moved = 0.1 * 0.1 * ((byBow[i] * byBow[j]) + (byPort[i] * byPort[j]));

                Close.To(moved, level.Covariance(i, j), 0.02 * 0.01);
            }
        }
    }

    [Fact]
    public void Level_and_zero_drop_out_of_the_difference_of_two_seats_of_one_side_at_one_station()
    {
        var corrected = CorrectedReadings.Of(
            [
                Taken.Gate(Taken.Seat(1), Station.Catch, 4.5, Taken.ByEye),
                Taken.Gate(Taken.Seat(3), Station.Catch, 3, Taken.ByEye),
            ],
            Taken.Settings);
        Estimate difference = corrected.Difference(0, 1);

        // √2 times the noise of one: 0.2504739.
        Assert.Equal(1.5, difference.Value.Degrees);
        Close.To(0.3542236, difference.U.Degrees, 5e-8);
        Close.To(0.7698943, corrected.Pitches[0].Estimate.U.Degrees, 5e-8);
    }

    [Fact]
    public void A_roll_does_not_drop_out_of_the_difference_of_two_sides()
    {
        var corrected = CorrectedReadings.Of(
            [
                Taken.Gate(Taken.Seat(1), Station.Catch, 4, Taken.ByEye),
                Taken.Gate(Taken.Seat(2, Side.Starboard), Station.Catch, 4, Taken.ByEye),
            ],
            Taken.Settings);

        // √(2 · 0.2504739² + (2 · 0.7 sin 55°)²)
        Close.To(1.2002725, corrected.Difference(0, 1).U.Degrees, 5e-8);
    }

    /// <summary>
    /// A level that is off moves two such seats alike: what is left in 0.002° comes of the sine, over readings from 0 to 7
    /// and half a degree of level.
    /// </summary>
    [Property]
    public void A_common_error_of_level_leaves_the_difference_of_two_such_seats_as_it_was(byte first, byte second, sbyte off)
    {
        double Difference(double level)
        {
            var lie = Taken.Read(Lie.Inverted, level, -level);
            var corrected = CorrectedReadings.Of(
                [
                    Taken.Gate(Taken.Seat(1), Station.Catch, first % 15 / 2.0, lie),
                    Taken.Gate(Taken.Seat(3), Station.Catch, second % 15 / 2.0, lie),
                ],
                Taken.Settings);
            return corrected.Difference(0, 1).Value.Degrees;
        }

        Close.To(Difference(0), Difference(off / 256.0), 0.002);
    }

    [Fact]
    public void What_two_lyings_share_is_the_gauge_alone()
    {
        var corrected = CorrectedReadings.Of(
            [
                Taken.Gate(Taken.Seat(1), Station.Catch, 4, Taken.ByEye),
                Taken.Gate(Taken.Seat(3), Station.Catch, 4, Taken.Level),
            ],
            Taken.Settings);

        Close.To(0.04, corrected.Covariance(0, 1), 1e-15);
    }

    private static Matrix<double> BruteForce(IReadOnlyList<Reading> all)
    {
        Reading[] readings = [.. all.Where(r => r.Item == ReadItem.Gate)];
        BoatLie[] lies = [.. all.Select(r => r.Lie).Distinct()];
        string[] gauges = [.. all.Select(r => r.Gauge.Name).Distinct()];
        int errors = readings.Length + (2 * lies.Length) + gauges.Length;
        var variances = Vector<double>.Build.Dense(errors);
        var single = Matrix<double>.Build.Dense(Math.Max(1, readings.Length), Math.Max(1, errors));
        for (int i = 0; i < readings.Length; i++)
        {
            Reading reading = readings[i];
            double radians = reading.At.Angle.Degrees * Math.PI / 180;
            double over = reading.Lie.Lie == Lie.Upright ? 1 : -1;
            double side = reading.Gate.Side == Side.Port ? 1 : -1;
            double held = 0.5 * (reading.At.Station == Station.Abeam ? 1 : 5) * Math.PI / 180;
            int lie = readings.Length + (2 * Array.IndexOf(lies, reading.Lie));
            int gauge = readings.Length + (2 * lies.Length) + Array.IndexOf(gauges, reading.Gauge.Name);
            variances[i] = (Math.Pow(reading.Gauge.Resolution.Degrees, 2) / 12)
                + Math.Pow(reading.Gauge.Repeatability.Degrees, 2) + (held * held);
            variances[gauge] = Math.Pow(reading.Gauge.Zero.Estimate.U.Degrees, 2);
            variances[lie] = variances[lie + 1] = LevelVariance(reading.Lie);
            single[i, i] = 1;
            single[i, lie] = -over * Math.Cos(radians);
            single[i, lie + 1] = -over * side * Math.Sin(radians);
            single[i, gauge] = -1;
        }

        Matrix<double> sigma = Matrix<double>.Build.DenseOfDiagonalVector(variances);
        var groups = Enumerable.Range(0, readings.Length)
            .GroupBy(i => (readings[i].Gate, readings[i].At))
            .OrderBy(g => g.Key.Gate.Seat).ThenBy(g => g.Key.Gate.Side).ThenByDescending(g => g.Key.At.Angle.Degrees)
            .Select(g => g.ToArray())
            .ToArray();
        if (groups.Length == 0)
        {
            return Matrix<double>.Build.Dense(1, 1).RemoveRow(0);
        }

        var pooled = Matrix<double>.Build.Dense(groups.Length, errors);
        for (int g = 0; g < groups.Length; g++)
        {
            Matrix<double> rows = Matrix<double>.Build.DenseOfRowVectors(groups[g].Select(i => single.Row(i)));
            Matrix<double> inverse = (rows * sigma * rows.Transpose()).Inverse();
            Vector<double> weights = inverse.RowSums() / inverse.RowSums().Sum();
            pooled.SetRow(g, weights * rows);
        }

        return pooled * sigma * pooled.Transpose();
    }

    private static double LevelVariance(BoatLie lie) => lie.Level switch
    {
        HullLevel.Read => 0.01,
        HullLevel.BubbleCentred => 0.04,
        HullLevel.ByEye => 0.49,
        _ => 0.01 + (0.15 * 0.15),
    };
}
