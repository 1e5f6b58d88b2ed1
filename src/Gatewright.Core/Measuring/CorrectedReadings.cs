using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Measuring;

/// <summary>
/// A boat's gates as read, corrected, with their covariances: what is shared by two of them (level, gauge zero)
/// drops out of their difference as far as both follow it alike.
/// </summary>
public sealed class CorrectedReadings
{
    /// <summary>Two-sided 95 % of the normal distribution: repeats further apart than this many u are queried.</summary>
    private const double RepeatsApart = 1.959964;

    private readonly List<CorrectedPitch> _pitches = [];
    private readonly List<double> _ownVariances = [];
    private readonly List<double[]> _slopes = [];
    private readonly double[] _sharedVariances;

    private CorrectedReadings(double[] sharedVariances) => _sharedVariances = sharedVariances;

    /// <summary>Every gate and point of the stroke that was read, from bow to stern and from catch to finish.</summary>
    public IReadOnlyList<CorrectedPitch> Pitches => _pitches;

    /// <summary>Corrects the gate readings of a boat, pooling those of one gate at one point of the stroke.</summary>
    public static CorrectedReadings Of(IReadOnlyList<Reading> readings, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(settings);
        var shared = new SharedErrors(readings, settings);
        var result = new CorrectedReadings(shared.Variances);
        var groups = readings
            .Where(r => r.Item == ReadItem.Gate)
            .GroupBy(r => (r.Gate, r.At))
            .OrderBy(g => g.Key.Gate)
            .ThenByDescending(g => g.Key.At.Angle.Degrees);
        foreach (var group in groups)
        {
            result.Add(group.Select(r => Single.Of(r, shared, settings)).ToList());
        }

        return result;
    }

    /// <summary>Where a gate's pitch at a station stands in <see cref="Pitches"/>, or −1 when it was not read there.</summary>
    public int IndexOf(GatePlace gate, Station station) =>
        _pitches.FindIndex(p => p.Gate == gate && p.At.Station == station);

    /// <summary>The covariance of two corrected pitches, in square degrees.</summary>
    public double Covariance(int first, int second)
    {
        double sum = first == second ? _ownVariances[first] : 0;
        for (int i = 0; i < _sharedVariances.Length; i++)
        {
            sum += _slopes[first][i] * _slopes[second][i] * _sharedVariances[i];
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

    /// <summary>
    /// Pools repeats by weights against each one's noise and level: within one lying that is the plain mean, and a
    /// boat read level outweighs the same boat read by eye.
    /// </summary>
    private void Add(List<Single> singles)
    {
        double total = singles.Sum(s => 1 / s.Variance(_sharedVariances));
        double[] slopes = new double[_sharedVariances.Length];
        double value = 0;
        double resolution = 0;
        double repeatability = 0;
        double held = 0;
        foreach (Single single in singles)
        {
            double weight = 1 / single.Variance(_sharedVariances) / total;
            value += weight * single.PitchDegrees;
            resolution += Math.Pow(weight * single.Noise.Resolution, 2);
            repeatability += Math.Pow(weight * single.Noise.Repeatability, 2);
            held += Math.Pow(weight * single.Noise.HeldAngle, 2);
            for (int i = 0; i < slopes.Length; i++)
            {
                slopes[i] += weight * single.Slopes[i];
            }
        }

        (double level, double zero) = Shared(slopes, singles[0].LevelErrors);
        var budget = new UncertaintyBudget(
            Math.Sqrt(resolution), Math.Sqrt(repeatability), Math.Sqrt(held), Math.Sqrt(level), Math.Sqrt(zero));
        _ownVariances.Add(resolution + repeatability + held);
        _slopes.Add(slopes);
        Reading first = singles[0].Reading;
        _pitches.Add(new(first.Gate, first.At, Pitch.FromDegrees(value), budget, singles.Count, Disagree(singles)));
    }

    private (double Level, double Zero) Shared(double[] slopes, int levelErrors)
    {
        double level = 0;
        double zero = 0;
        for (int i = 0; i < slopes.Length; i++)
        {
            double part = slopes[i] * slopes[i] * _sharedVariances[i];
            (level, zero) = i < levelErrors ? (level + part, zero) : (level, zero + part);
        }

        return (level, zero);
    }

    private bool Disagree(List<Single> singles)
    {
        for (int i = 0; i < singles.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double apart = Math.Abs(singles[i].PitchDegrees - singles[j].PitchDegrees);
                if (apart > RepeatsApart * Math.Sqrt(singles[i].VarianceOfDifference(singles[j], _sharedVariances)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>One gate reading, corrected.</summary>
    private sealed record Single(
        Reading Reading, double PitchDegrees, UncertaintyBudget Noise, double[] Slopes, int LevelErrors)
    {
        public static Single Of(Reading reading, SharedErrors shared, MeasuringSettings settings)
        {
            Pitch shown = new(reading.Value - reading.Gauge.Zero.Estimate.Value);
            HullAttitude hull = shared.Level(reading.Lie).Attitude;
            Pitch level = PitchGeometry.OnLevelHull(shown, reading.At.Angle, reading.Gate.Side, hull, reading.Lie.Lie);
            return new(reading, level.Degrees, ReadingNoise.Of(reading, settings), shared.Slopes(reading), 2 * shared.Lies.Count);
        }

        /// <summary>Noise and level, not the gauge's zero, which repeats with one gauge share whole.</summary>
        public double Variance(double[] sharedVariances)
        {
            double variance = Math.Pow(Noise.CombinedDegrees, 2);
            for (int i = 0; i < LevelErrors; i++)
            {
                variance += Slopes[i] * Slopes[i] * sharedVariances[i];
            }

            return variance;
        }

        public double VarianceOfDifference(Single other, double[] sharedVariances)
        {
            double variance = Math.Pow(Noise.CombinedDegrees, 2) + Math.Pow(other.Noise.CombinedDegrees, 2);
            for (int i = 0; i < Slopes.Length; i++)
            {
                double apart = Slopes[i] - other.Slopes[i];
                variance += apart * apart * sharedVariances[i];
            }

            return variance;
        }
    }
}
