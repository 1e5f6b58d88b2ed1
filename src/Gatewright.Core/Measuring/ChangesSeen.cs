using System.Runtime.InteropServices;

namespace Gatewright.Core.Measuring;

/// <summary>Which gates and pins read otherwise than on the days before.</summary>
/// <remarks>
/// The mean of what a gate was and what it is tells of neither: a gate that fell under its floor would be lifted over it again by
/// the good readings of last month. So each day is held against all later ones that agree among each other, and from the first
/// that does not, back, a gate's readings no longer count, of face and pin alike and at no station: what changes a pin changes the face
/// on it at all of them.
/// </remarks>
internal sealed class ChangesSeen(IReadOnlyList<Reading> readings, MeasuringSettings settings)
{
    private readonly SharedErrors _shared = new(readings, settings);

    /// <summary>The changes; empty where no gate was read on more than one day.</summary>
    public static IReadOnlyList<SeenChange> Of(IReadOnlyList<Reading> readings, MeasuringSettings settings)
    {
        List<IGrouping<GatePlace, Reading>> gates = [.. readings
            .Where(r => r.Item != ReadItem.Sleeve)
            .GroupBy(r => r.Gate)
            .Where(g => g.Select(r => r.Lie.Date).Distinct().Skip(1).Any())
            .OrderBy(g => g.Key)];
        if (gates.Count == 0)
        {
            return [];
        }

        var seen = new ChangesSeen(readings, settings);
        return [.. gates.SelectMany(seen.Of)];
    }

    private SeenChange[] Of(IEnumerable<Reading> gate)
    {
        CorrectedReading[] newestFirst = [.. gate.Select(r => CorrectedReading.Of(r, _shared, settings))];
        Array.Sort(newestFirst, (left, right) => Day(right).CompareTo(Day(left)));
        int now = 0;
        for (int next = 0; next < newestFirst.Length; now = next)
        {
            while (next < newestFirst.Length && Day(newestFirst[next]) == Day(newestFirst[now]))
            {
                next++;
            }

            if (now > 0 && Between(newestFirst.AsSpan(0, now), newestFirst.AsSpan(now, next - now)) is { Length: > 0 } changes)
            {
                FormerFace[] faces = Faces(newestFirst[now..]);
                return Array.ConvertAll(changes, change => change with { Faces = faces });
            }
        }

        return [];
    }

    /// <summary>What has no date is taken as new.</summary>
    private static DateOnly Day(CorrectedReading reading) => reading.Reading.Lie.Date ?? DateOnly.MaxValue;

    /// <summary>Of each thing read, where the two contradict each other most; empty where they do nowhere.</summary>
    private SeenChange[] Between(ReadOnlySpan<CorrectedReading> now, ReadOnlySpan<CorrectedReading> then)
    {
        var worst = new SortedDictionary<ReadItem, (SeenChange Change, double Ratio)>();
        for (int i = 0; i < then.Length; i++)
        {
            CorrectedReading[] here = At(now, then[i]);
            if (here.Length == 0 || At(then[..i], then[i]).Length > 0)
            {
                continue;
            }

            (Pooled after, Pooled before) = (Pool(here), Pool(At(then, then[i])));
            double apart = after.Value - before.Value;
            double u = Math.Sqrt(after.NoiseVariance + before.NoiseVariance + Shared(after.Slopes, before.Slopes));
            double ratio = apart == 0 ? 0 : u > 0 ? Math.Abs(apart) / u : double.PositiveInfinity;
            Reading old = then[i].Reading;
            if (ratio > (worst.TryGetValue(old.Item, out (SeenChange Change, double Ratio) most) ? most.Ratio : RepeatedReading.Apart))
            {
                bool isConfirmed = here.Length > 1 && RepeatedReading.Disagreement(here, _shared.Variances) is null;
                worst[old.Item] = (new(old.Item, old.Gate, old.At, Estimate.FromDegrees(apart, u), old.Lie.Date!.Value, [], isConfirmed), ratio);
            }
        }

        return [.. worst.Values.Select(w => w.Change)];
    }

    /// <summary>Point by point, as the last day it was read there had it.</summary>
    private FormerFace[] Faces(CorrectedReading[] newestFirst) =>
    [
        .. from reading in newestFirst
           where reading.Reading.Item == ReadItem.Gate
           group reading by reading.Reading.At into point
           let last = Day(point.First())
           let face = Pool([.. point.Where(r => Day(r) == last)])
           let u = Math.Sqrt(face.NoiseVariance + Shared(face.Slopes, []))
           orderby point.Key.Angle.Degrees descending
           select new FormerFace(point.Key, last, Estimate.FromDegrees(face.Value, u)),
    ];

    private static CorrectedReading[] At(ReadOnlySpan<CorrectedReading> readings, CorrectedReading point)
    {
        int count = 0;
        foreach (CorrectedReading reading in readings)
        {
            count += reading.Repeats(point) ? 1 : 0;
        }

        var found = new CorrectedReading[count];
        foreach (CorrectedReading reading in readings)
        {
            if (reading.Repeats(point))
            {
                found[^count--] = reading;
            }
        }

        return found;
    }

    private Pooled Pool(CorrectedReading[] repeats)
    {
        if (repeats is [var only])
        {
            return new(only.Degrees, only.Noise.Variance, only.Slopes);
        }

        double[] weights = RepeatedReading.Weights(repeats, _shared.Variances);
        (double value, double noise, double[] slopes) = (0, 0, new double[_shared.Variances.Length]);
        for (int i = 0; i < repeats.Length; i++)
        {
            value += weights[i] * repeats[i].Degrees;
            noise += weights[i] * weights[i] * repeats[i].Noise.Variance;
            for (int j = 0; j < slopes.Length; j++)
            {
                slopes[j] += weights[i] * repeats[i].Slopes[j];
            }
        }

        return new(value, noise, slopes);
    }

    /// <summary>The variance of what both share and follow differently.</summary>
    private double Shared(double[] one, double[] other)
    {
        double sum = 0;
        for (int i = 0; i < one.Length; i++)
        {
            double slope = one[i] - (i < other.Length ? other[i] : 0);
            sum += slope * slope * _shared.Variances[i];
        }

        return sum;
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Pooled(double Value, double NoiseVariance, double[] Slopes);
}
