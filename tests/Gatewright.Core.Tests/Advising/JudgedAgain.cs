using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Tests.Advising;

/// <summary>
/// How much a further reading settles of verdicts that are not good, the long way: with no belief about gates, the
/// value known better may lie anywhere about the value known now, and each place is tried in turn.
/// </summary>
internal sealed class JudgedAgain(BoatCheck check)
{
    public double Drop(ReadingChoice choice) => check.Verdict.Gates
        .SelectMany(g => g.Reasons.Select(r => (g.Gate, Reason: r)))
        .Where(r => r.Reason.Read)
        .DistinctBy(r => (r.Reason.Kind, r.Reason.Station, r.Reason.Kind == ReasonKind.Range ? default : r.Gate))
        .Sum(r => Drop(choice, r.Gate, r.Reason));

    private double Drop(ReadingChoice choice, GatePlace gate, Reason reason)
    {
        BoatReadings taken = ReadingTaken.On(check.Readings, choice, default, default, MeasuringSettings.Default);
        CorrectedReadings then = CorrectedReadings.Of(taken.Readings, MeasuringSettings.Default);
        double now = reason.Value.U.Degrees;
        int at = then.IndexOf(gate, reason.Station);
        double later = reason.Kind switch
        {
            ReasonKind.Range => then.Difference(at, then.IndexOf(reason.Other!.Value, reason.Station)).U.Degrees,
            ReasonKind.Drop => then.Difference(then.IndexOf(gate, Station.Catch), at).U.Degrees,
            _ => then.Pitches[at].Budget.CombinedDegrees,
        };
        double spread = Math.Sqrt((now * now) - (later * later));
        double off = reason.Value.Value.Degrees - reason.Limit.Degrees;
        if (spread < 1e-6)
        {
            return 0;
        }

        const double Step = 0.001;
        double expected = 0;
        for (double t = -8; t <= 8; t += Step)
        {
            expected += Step * Normal.Density(t) * Bits(off + (spread * t), later);
        }

        return Bits(off, now) - expected;
    }

    private static double Bits(double off, double u)
    {
        double above = Normal.Cdf(off / u);
        return Entropy.Bits([above, 1 - above]);
    }
}
