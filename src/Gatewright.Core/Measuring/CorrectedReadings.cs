using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Measuring;

/// <summary>
/// A boat's gates as read, corrected, with their covariances: what is shared by two of them (level, gauge zero)
/// drops out of their difference as far as both follow it alike.
/// </summary>
public sealed class CorrectedReadings
{
    private readonly List<CorrectedPitch> _pitches;
    private readonly List<double[]> _slopes;
    private readonly SharedErrors _shared;

    private CorrectedReadings(SharedErrors shared, int atMost) =>
        (_shared, _pitches, _slopes) = (shared, new(atMost), new(atMost));

    /// <summary>Every gate and point of the stroke that was read, from bow to stern and from catch to finish.</summary>
    public IReadOnlyList<CorrectedPitch> Pitches => _pitches;

    /// <summary>Corrects the gate readings of a boat, pooling those of one gate at one point of the stroke.</summary>
    /// <remarks>
    /// Where readings disagree about the zero of a gauge of one name, the zero that is known best corrects them all.
    /// </remarks>
    public static CorrectedReadings Of(IReadOnlyList<Reading> readings, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(settings);
        var shared = new SharedErrors(readings, settings);
        ReadOnlySpan<CorrectedReading> singles = Singles(readings, shared, settings);
        var result = new CorrectedReadings(shared, singles.Length);
        int next = 0;
        for (int first = 0; first < singles.Length; first = next)
        {
            next = first + 1;
            while (next < singles.Length && singles[next].Repeats(singles[first]))
            {
                next++;
            }

            result.Add(singles[first..next]);
        }

        return result;
    }

    /// <summary>Where a gate's pitch at a station stands in <see cref="Pitches"/>, or −1 when it was not read there.</summary>
    public int IndexOf(GatePlace gate, Station station)
    {
        for (int i = 0; i < _pitches.Count; i++)
        {
            if (_pitches[i].At.Station == station && _pitches[i].Gate == gate)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The covariance of two corrected pitches, in square degrees.</summary>
    public double Covariance(int first, int second)
    {
        double sum = first == second ? OwnVariance(_pitches[first].Budget) : 0;
        for (int i = 0; i < _shared.Variances.Length; i++)
        {
            sum += _slopes[first][i] * _slopes[second][i] * _shared.Variances[i];
        }

        return sum;
    }

    /// <summary>One corrected pitch less another, with the uncertainty of the difference.</summary>
    public Estimate Difference(int first, int second)
    {
        double variance = Covariance(first, first) + Covariance(second, second) - (2 * Covariance(first, second));
        double value = _pitches[first].Pitch.Degrees - _pitches[second].Pitch.Degrees;
        return Estimate.FromDegrees(value, Math.Sqrt(Math.Max(0, variance)));
    }

    /// <summary>All the covariances, in the order of <see cref="Pitches"/>.</summary>
    public CovarianceMatrix Covariances()
    {
        int size = _pitches.Count;
        double[] rows = new double[size * size];
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j < size; j++)
            {
                rows[(i * size) + j] = Covariance(Math.Max(i, j), Math.Min(i, j));
            }
        }

        return new(size, rows);
    }

    private static CorrectedReading[] Singles(
        IReadOnlyList<Reading> readings, SharedErrors shared, MeasuringSettings settings)
    {
        var singles = new List<CorrectedReading>(readings.Count);
        for (int i = 0; i < readings.Count; i++)
        {
            if (readings[i].Item == ReadItem.Gate)
            {
                singles.Add(CorrectedReading.Of(readings[i], shared, settings));
            }
        }

        singles.Sort(CorrectedReading.InOrder);
        return [.. singles];
    }

    private void Add(ReadOnlySpan<CorrectedReading> repeats)
    {
        double[] weights = RepeatedReading.Weights(repeats, _shared.Variances);
        Reading first = repeats[0].Reading;
        double value = repeats[0].Degrees;
        double[] slopes = new double[_shared.Variances.Length];
        for (int i = 0; i < repeats.Length; i++)
        {
            // About the first, so that repeats of one value pool to that value and not to its neighbour.
            value += weights[i] * (repeats[i].Degrees - repeats[0].Degrees);
            for (int j = 0; j < slopes.Length; j++)
            {
                slopes[j] += weights[i] * repeats[i].Slopes[j];
            }
        }

        Estimate? apart = RepeatedReading.Disagreement(repeats, _shared.Variances);
        UncertaintyBudget budget = Budget(repeats, weights, slopes);
        _slopes.Add(slopes);
        _pitches.Add(new(first.Gate, first.At, Pitch.FromDegrees(value), budget, repeats.Length, apart)
        {
            Lowest = apart is null ? null : Lowest(repeats),
        });
    }

    private Estimate Lowest(ReadOnlySpan<CorrectedReading> repeats)
    {
        CorrectedReading lowest = repeats[0];
        foreach (CorrectedReading reading in repeats)
        {
            lowest = reading.Degrees < lowest.Degrees ? reading : lowest;
        }

        return Estimate.FromDegrees(lowest.Degrees, Math.Sqrt(lowest.Noise.Variance + Shared(lowest.Slopes, 0, lowest.Slopes.Length)));
    }

    private UncertaintyBudget Budget(ReadOnlySpan<CorrectedReading> repeats, double[] weights, double[] slopes)
    {
        double resolution = 0;
        double repeatability = 0;
        double held = 0;
        for (int i = 0; i < repeats.Length; i++)
        {
            double square = weights[i] * weights[i];
            UncertaintyBudget noise = repeats[i].Noise;
            resolution += square * noise.Resolution * noise.Resolution;
            repeatability += square * noise.Repeatability * noise.Repeatability;
            held += square * noise.HeldAngle * noise.HeldAngle;
        }

        double level = Shared(slopes, 0, _shared.LevelErrors);
        double zero = Shared(slopes, _shared.LevelErrors, slopes.Length);
        return new(Math.Sqrt(resolution), Math.Sqrt(repeatability), Math.Sqrt(held), Math.Sqrt(level), Math.Sqrt(zero));
    }

    private double Shared(double[] slopes, int from, int to)
    {
        double sum = 0;
        for (int i = from; i < to; i++)
        {
            sum += slopes[i] * slopes[i] * _shared.Variances[i];
        }

        return sum;
    }

    /// <summary>What is uncertain of this pitch alone.</summary>
    private static double OwnVariance(UncertaintyBudget budget) => (budget with { Level = 0, GaugeZero = 0 }).Variance;
}
