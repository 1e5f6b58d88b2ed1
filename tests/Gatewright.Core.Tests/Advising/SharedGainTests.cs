using Gatewright.Core.Advising;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Gatewright.Core.Tests.Advising;

/// <summary>What a look at the level or at the gauge is expected to tell, against the model written out anew.</summary>
public class SharedGainTests
{
    /// <summary>A third of the narrowest deviation that a level or a zero keeps here, 0.15°.</summary>
    private const double Step = 0.05;

    private static Dictionary<string, Round> Boats { get; } = new()
    {
        ["both high"] = Round.Abeam("2-", new HullLevel.ByEye(), 5.5, 5.5),
        ["one high"] = Round.Abeam("2-", new HullLevel.ByEye(), 4.5, 5.5),
        ["both high at the catch, too"] = Round.Abeam("2-", new HullLevel.ByEye(), 5.5, 5.5)
            .Gate(new(1, Side.Starboard), Station.Catch, 4)
            .Gate(new(2, Side.Port), Station.Catch, 5),
    };

    public static TheoryData<string> Names => [.. Boats.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_gauge_reversed_tells_what_the_whole_model_says(string boat)
    {
        Round round = Boats[boat];
        var oracle = new DenseOracle(round.Taken, levelU: 0.7, zeroU: 0.2);

        AssertTells(round, NextItem.GaugeReversed, oracle, 0.05, oracle.Zero);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_level_tells_what_the_whole_model_says(string boat)
    {
        Round round = Boats[boat];
        var oracle = new DenseOracle(round.Taken, levelU: 0.7, zeroU: 0.2);

        AssertTells(round, NextItem.Level, oracle, 0.1, oracle.BowHigh, oracle.PortLow);
    }

    /// <remarks>0.003 bit: the quadrature's own 0.002, and what an account loses by being taken as one normal.</remarks>
    private static void AssertTells(Round round, NextItem item, DenseOracle oracle, double u, params int[] unknowns)
    {
        Advice advice = round.Advice;
        NextReading reading = advice.Others.Append(advice.Next).OfType<NextReading>().Single(r => r.Choice.Item == item);

        // Every gate here that is out; the others are asked about once those are mended.
        List<(double Causes, double Verdicts)> told = [.. round.Check.Verdict.Gates
            .Where(g => g.Verdict != Verdict.Good)
            .Select(g => g.Gate)
            .Select(gate => Told(round, oracle, gate, u, unknowns))];
        double again = new JudgedAgain(round.Check).Drop(reading.Choice);
        Assert.Equal(told.Max(t => t.Causes), reading.CauseBits, 0.003);
        Assert.Equal(told.Sum(t => t.Verdicts) + again, reading.VerdictBits, 0.006);
    }

    private static (double Causes, double Verdicts) Told(Round round, DenseOracle oracle, GatePlace gate, double u, int[] unknowns)
    {
        List<DenseOutlook> outlooks = [.. oracle.Stories.Select(story => new DenseOutlook(round, oracle, story, gate, u, unknowns))];
        double most = outlooks.Max(o => o.LogWeight);
        double[] prior = [.. outlooks.Select(o => Math.Exp(o.LogWeight - most))];
        double all = prior.Sum();
        string[] keys = [.. oracle.Stories.Select(s => s.SeenFrom(gate))];
        double[] now = [.. outlooks.Select((o, k) => prior[k] / all)];
        double causes = Bits(keys, now);
        double verdicts = VerdictBits(outlooks, now, null);
        double total = 0;
        foreach (Vector<double> outcome in Grid(unknowns.Length))
        {
            double[] densities = [.. outlooks.Select((o, k) => now[k] * o.Density(outcome))];
            double density = densities.Sum();
            if (density < 1e-7)
            {
                continue;
            }

            double weight = density * Math.Pow(Step * (unknowns.Length == 1 ? 1 : 2), unknowns.Length);
            double[] then = [.. densities.Select(d => d / density)];
            total += weight;
            causes -= weight * Bits(keys, then);
            verdicts -= weight * VerdictBits(outlooks, then, outcome);
        }

        Assert.Equal(1, total, 1e-3);
        return (causes, verdicts);
    }

    private static IEnumerable<Vector<double>> Grid(int dimensions)
    {
        double step = Step * dimensions;
        double[] points = [.. Enumerable.Range(0, (int)(18 / step) + 1).Select(i => -9 + (i * step))];
        return dimensions == 1
            ? points.Select(p => Vector<double>.Build.Dense([p]))
            : points.SelectMany(p => points.Select(q => Vector<double>.Build.Dense([p, q])));
    }

    private static double Bits(string[] keys, double[] probabilities)
    {
        var sums = new Dictionary<string, double>();
        for (int k = 0; k < keys.Length; k++)
        {
            sums[keys[k]] = sums.GetValueOrDefault(keys[k]) + probabilities[k];
        }

        return Entropy.Bits([.. sums.Values]);
    }

    private static double VerdictBits(List<DenseOutlook> outlooks, double[] weights, Vector<double>? outcome)
    {
        double bits = 0;
        for (int s = 0; s < outlooks[0].Limits.Count; s++)
        {
            StationLimits limits = outlooks[0].Limits[s];
            double[] classes = new double[3];
            for (int k = 0; k < outlooks.Count; k++)
            {
                if (weights[k] > 1e-7)
                {
                    (double mean, double deviation) = outlooks[k].Pitch(s, outcome);
                    double below = Normal.Cdf((limits.Floor.Degrees - mean) / deviation);
                    double inside = Normal.Cdf((limits.Highest.Degrees - mean) / deviation)
                        - Normal.Cdf((limits.Lowest.Degrees - mean) / deviation);
                    classes[0] += weights[k] * below;
                    classes[1] += weights[k] * (1 - below - inside);
                    classes[2] += weights[k] * inside;
                }
            }

            bits += Entropy.Bits(classes);
        }

        return bits;
    }

    /// <summary>What one story expects of the look and of the stations that were not read.</summary>
    private sealed class DenseOutlook
    {
        private readonly Vector<double> _mean;
        private readonly Matrix<double> _inverse;
        private readonly double _scale;
        private readonly List<(double Mean, double Variance, Vector<double> With)> _pitches = [];

        public DenseOutlook(Round round, DenseOracle oracle, DenseStory story, GatePlace gate, double u, int[] unknowns)
        {
            (LogWeight, Vector<double> mean, Matrix<double> covariance) = oracle.Given(story);
            Matrix<double> look = Matrix<double>.Build.Dense(unknowns.Length, oracle.Size);
            for (int i = 0; i < unknowns.Length; i++)
            {
                look[i, unknowns[i]] = 1;
            }

            Matrix<double> own = (look * covariance * look.Transpose())
                + (u * u * Matrix<double>.Build.DenseIdentity(unknowns.Length));
            _mean = look * mean;
            _inverse = own.Inverse();
            _scale = 1 / Math.Sqrt(Math.Pow(2 * Math.PI, unknowns.Length) * own.Determinant());
            foreach (Station station in Core.Stations.All)
            {
                if (round.Check.Corrected.IndexOf(gate, station) >= 0)
                {
                    continue;
                }

                double angle = MeasuringSettings.Default.Sweep.At(station).Degrees * Math.PI / 180;
                Vector<double> pitch = Vector<double>.Build.Dense(oracle.Size);
                int at = oracle.Gate(gate);
                (pitch[at], pitch[at + 1], pitch[at + 2]) = (1, Math.Cos(angle), Math.Sin(angle));
                _pitches.Add((pitch * mean, pitch * covariance * pitch, look * covariance * pitch));
                Limits.Add(Standard.Club.At(station));
            }
        }

        public double LogWeight { get; }

        public List<StationLimits> Limits { get; } = [];

        public double Density(Vector<double> outcome)
        {
            Vector<double> off = outcome - _mean;
            return _scale * Math.Exp(-0.5 * (off * _inverse * off));
        }

        public (double Mean, double Deviation) Pitch(int station, Vector<double>? outcome)
        {
            (double mean, double variance, Vector<double> with) = _pitches[station];
            return outcome is null
                ? (mean, Math.Sqrt(variance))
                : (mean + (with * _inverse * (outcome - _mean)), Math.Sqrt(variance - (with * _inverse * with)));
        }
    }
}
