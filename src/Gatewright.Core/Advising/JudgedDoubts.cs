using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Advising;

/// <summary>
/// The doubt that readings leave where a gate was judged not good: whether the pitch, the drop or the range really lies
/// on the wrong side of its limit. As the verdict, it rests on the readings alone; what was judged good is settled.
/// </summary>
internal sealed class JudgedDoubts
{
    private readonly BoatCheck _check;
    private readonly List<Doubt> _doubts;
    private readonly HashSet<(GatePlace Gate, ReadItem Item, Station? Station)> _contradicted;
    private readonly bool _isSomethingElseOpen;

    public JudgedDoubts(BoatCheck check)
    {
        _check = check;
        _doubts = [.. check.Verdict.Gates
            .SelectMany(gate => gate.Reasons.Where(r => r is { Read: true, IsOneReading: false, Item: ReadItem.Gate }).Select(reason => Of(gate.Gate, reason, check.Corrected)))
            .DistinctBy(d => (d.First, d.Second, d.Reason.Kind))];
        _contradicted = [.. check.Verdict.Gates.SelectMany(gate => gate.Reasons.Where(r => IsContradiction(gate, r)).Select(r => (gate.Gate, r.Item, Station: (Station?)r.Station)))
            .Where(c => check.Readings.Readings.Count(r => (r.Gate, r.Item, r.At.Station) == c) <= 2)];
        _isSomethingElseOpen = check.Verdict.Gates.Any(gate => gate.Reasons.Any(r => r.IsOneReading || r.Item != ReadItem.Gate));
    }

    /// <summary>Whether no reading leaves a verdict open.</summary>
    public bool Settled => !_isSomethingElseOpen && _doubts.TrueForAll(d => d.Reason.Verdict != Verdict.Unsure);

    /// <summary>How much of it a further reading is expected to take away, in bits; 0 for one that measures nothing again.</summary>
    public double Drop(ReadingChoice choice)
    {
        bool again = choice.Item is NextItem.Level or NextItem.GaugeReversed
            || (choice is { Item: NextItem.Gate, Gate: { } gate, At.Station: { } station }
                && _check.Corrected.IndexOf(gate, station) >= 0);
        // Of two readings that contradict each other either may be right: a third tells which. A pin is read abeam.
        double contradicted = choice.Gate is { } at
            && _contradicted.Contains((at, ReadingTaken.ItemOf(choice.Item), choice.At is { } point ? point.Station : Station.Abeam)) ? 1 : 0;
        if (_doubts.Count == 0 || !again)
        {
            return contradicted;
        }

        // How well a value will be known does not depend on what the reading shows.
        MeasuringSettings settings = _check.Settings.Diagnosing.Measuring;
        BoatReadings taken = ReadingTaken.On(_check.Readings, choice, default, default, settings);
        CorrectedReadings then = CorrectedReadings.Of(taken.Readings, settings);
        return contradicted + _doubts.Sum(d => d.Bits - d.ExpectedBits(d.Variance(then)));
    }

    /// <summary>Or that a face was not read again since it was under its floor.</summary>
    private static bool IsContradiction(GateVerdict gate, Reason reason) =>
        reason.Kind is ReasonKind.Repeats or ReasonKind.Changed || (reason is { IsOneReading: true, Before: not null } && !gate.At(reason.Station).Read);

    private static Doubt Of(GatePlace gate, Reason reason, CorrectedReadings corrected) => reason.Kind switch
    {
        ReasonKind.Drop => new(
            reason, corrected.IndexOf(gate, Station.Catch), corrected.IndexOf(gate, Station.Finish)),
        ReasonKind.Range => Ordered(
            reason, corrected.IndexOf(gate, reason.Station), corrected.IndexOf(reason.Other!.Value, reason.Station)),
        _ => new(reason, corrected.IndexOf(gate, reason.Station), null),
    };

    private static Doubt Ordered(Reason reason, int one, int other) =>
        new(reason, Math.Min(one, other), Math.Max(one, other));

    /// <summary>One ground of a verdict, and the readings it rests on.</summary>
    private sealed record Doubt(Reason Reason, int First, int? Second)
    {
        public double Bits => EitherWay(Off, U);

        private double Off => Reason.Value.Value.Degrees - Reason.Limit.Degrees;

        private double U => Reason.Value.U.Degrees;

        public double Variance(CorrectedReadings readings) => Second is { } second
            ? Math.Pow(readings.Difference(First, second).U.Degrees, 2)
            : readings.Covariance(First, First);

        /// <summary>
        /// Without belief about gates, the value known better lies about the value known now by what the variance loses.
        /// </summary>
        public double ExpectedBits(double variance)
        {
            const double Step = 0.5;
            const int Reach = 10;
            double lost = (U * U) - variance;
            if (lost < 1e-9)
            {
                return Bits;
            }

            double sum = 0;
            double total = 0;
            for (int i = -Reach; i <= Reach; i++)
            {
                double weight = Normal.Density(i * Step);
                sum += weight * EitherWay(Off + (i * Step * Math.Sqrt(lost)), Math.Sqrt(variance));
                total += weight;
            }

            return sum / total;
        }

        private static double EitherWay(double off, double u)
        {
            double above = NormalTable.Cdf(off / u);
            return Entropy.Term(above) + Entropy.Term(1 - above);
        }
    }
}
