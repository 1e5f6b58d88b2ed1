using System.Runtime.InteropServices;

namespace Gatewright.Core.Measuring;

/// <summary>Which gates read otherwise than on the days before.</summary>
/// <remarks>
/// The mean of what a gate was and what it is tells of neither: a gate that fell under its floor would be lifted over it again by
/// the good readings of last month. So each day is held against all later ones that agree among each other, and from the first
/// that does not, back, a gate's readings no longer count: at no station, since what changes a gate changes it at all of them.
/// </remarks>
internal sealed class ChangesSeen(IReadOnlyList<Reading> readings, MeasuringSettings settings)
{
    private readonly SharedErrors _shared = new(readings, settings);

    /// <summary>The changes; empty where no gate's face was read on more than one day.</summary>
    public static IReadOnlyList<SeenChange> Of(IReadOnlyList<Reading> readings, MeasuringSettings settings)
    {
        List<IGrouping<GatePlace, Reading>> gates = [.. readings
            .Where(r => r.Item == ReadItem.Gate)
            .GroupBy(r => r.Gate)
            .Where(g => g.Select(r => r.Lie.Date).Distinct().Skip(1).Any())
            .OrderBy(g => g.Key)];
        if (gates.Count == 0)
        {
            return [];
        }

        var seen = new ChangesSeen(readings, settings);
        return [.. gates.Select(seen.Of).OfType<SeenChange>()];
    }

    private SeenChange? Of(IEnumerable<Reading> gate)
    {
        var now = new List<CorrectedReading>();
        foreach (IGrouping<DateOnly?, Reading> day in gate.GroupBy(r => r.Lie.Date).OrderByDescending(d => d.Key ?? DateOnly.MaxValue))
        {
            List<CorrectedReading> then = [.. day.Select(r => CorrectedReading.Of(r, _shared, settings))];
            if (day.Key is { } date && Between(now, then, date) is { } change)
            {
                return change;
            }

            now.AddRange(then);
        }

        return null;
    }

    /// <summary>Where the two contradict each other most; null where they do nowhere.</summary>
    private SeenChange? Between(List<CorrectedReading> now, List<CorrectedReading> then, DateOnly day)
    {
        (SeenChange? worst, double most) = (null, RepeatedReading.Apart);
        foreach (IGrouping<StrokePoint, CorrectedReading> point in then.GroupBy(r => r.Reading.At))
        {
            CorrectedReading[] here = [.. now.Where(r => r.Reading.At == point.Key)];
            if (here.Length == 0)
            {
                continue;
            }

            (Pooled after, Pooled before) = (Pool(here), Pool([.. point]));
            double apart = after.Value - before.Value;
            double u = Math.Sqrt(after.NoiseVariance + before.NoiseVariance + Shared(Less(after.Slopes, before.Slopes)));
            double ratio = apart == 0 ? 0 : u > 0 ? Math.Abs(apart) / u : double.PositiveInfinity;
            if (ratio > most)
            {
                bool isConfirmed = here.Length > 1 && RepeatedReading.Disagreement(here, _shared.Variances) is null;
                double thenU = Math.Sqrt(before.NoiseVariance + Shared(before.Slopes));
                worst = new(
                    here[0].Reading.Gate, point.Key, Estimate.FromDegrees(apart, u), day, Estimate.FromDegrees(before.Value, thenU), isConfirmed);
                most = ratio;
            }
        }

        return worst;
    }

    private Pooled Pool(CorrectedReading[] repeats)
    {
        double[] weights = RepeatedReading.Weights(repeats, _shared.Variances);
        var pooled = new Pooled(0, 0, new double[_shared.Variances.Length]);
        for (int i = 0; i < repeats.Length; i++)
        {
            pooled = new(
                pooled.Value + (weights[i] * repeats[i].PitchDegrees),
                pooled.NoiseVariance + (weights[i] * weights[i] * repeats[i].Noise.Variance),
                Less(pooled.Slopes, repeats[i].Slopes, -weights[i]));
        }

        return pooled;
    }

    private static double[] Less(double[] one, double[] other, double times = 1) => [.. one.Zip(other, (a, b) => a - (times * b))];

    private double Shared(double[] slopes)
    {
        double sum = 0;
        for (int i = 0; i < slopes.Length; i++)
        {
            sum += slopes[i] * slopes[i] * _shared.Variances[i];
        }

        return sum;
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Pooled(double Value, double NoiseVariance, double[] Slopes);
}
