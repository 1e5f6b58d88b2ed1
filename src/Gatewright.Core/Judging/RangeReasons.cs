using Gatewright.Core.Measuring;

namespace Gatewright.Core.Judging;

/// <summary>Where the gates of a boat are too far apart at one station, and which gate that is laid to.</summary>
/// <remarks>
/// It is laid to the gate furthest from the middle of the boat: that is where mending one gate does most. The middle is
/// the median, which one bad gate does not drag along. Where several are as far, as the two of a pair always are, it is
/// laid to those of them that lie outside the station's own limits, and to all when none does.
/// </remarks>
internal static class RangeReasons
{
    /// <summary>Degrees: as far, but for the last digit of a correction.</summary>
    private const double AsFar = 1e-9;

    /// <summary>As well known, to as many digits of a degree.</summary>
    private const int Digits = 9;

    /// <summary>The reasons, each with the gate that it is laid to.</summary>
    public static List<(GatePlace Gate, Reason Reason)> Of(CorrectedReadings corrected, Standard standard, DecisionRule rule)
    {
        var reasons = new List<(GatePlace, Reason)>();
        foreach (Station station in Stations.All)
        {
            (int lowest, int highest) = Ends(corrected, station);
            if (lowest >= 0 && corrected.Difference(highest, lowest).Value > standard.LargestRange)
            {
                AddTo(reasons, station, lowest, highest, corrected, standard, rule);
            }
        }

        return reasons;
    }

    /// <summary>The lowest and the highest pitch read at a station, of equals the one nearest the bow; −1 where none was.</summary>
    private static (int Lowest, int Highest) Ends(CorrectedReadings corrected, Station station)
    {
        (int lowest, int highest) = (-1, -1);
        for (int i = 0; i < corrected.Pitches.Count; i++)
        {
            if (corrected.Pitches[i].At.Station == station)
            {
                lowest = lowest < 0 || Degrees(corrected, i) < Degrees(corrected, lowest) ? i : lowest;
                highest = highest < 0 || Degrees(corrected, i) > Degrees(corrected, highest) ? i : highest;
            }
        }

        return (lowest, highest);
    }

    private static void AddTo(
        List<(GatePlace, Reason)> reasons,
        Station station,
        int lowest,
        int highest,
        CorrectedReadings corrected,
        Standard standard,
        DecisionRule rule)
    {
        double[] sorted = [.. corrected.Pitches.Where(p => p.At.Station == station).Select(p => p.Pitch.Degrees).Order()];
        double middle = (sorted[sorted.Length / 2] + sorted[(sorted.Length - 1) / 2]) / 2;
        double furthest = Math.Max(sorted[^1] - middle, middle - sorted[0]);
        foreach (int i in Blamed(corrected, station, middle, furthest, standard.At(station)))
        {
            double off = Degrees(corrected, i) - middle;
            int other = Opposite(corrected, i, off > 0 ? lowest : highest, station);
            Estimate range = Apart(corrected, i, other);
            (Verdict verdict, double outside) = rule.AtMost(range, standard.LargestRange);
            if (verdict != Verdict.Good)
            {
                reasons.Add((corrected.Pitches[i].Gate, new(
                    verdict,
                    ReasonKind.Range,
                    station,
                    range,
                    standard.LargestRange,
                    outside,
                    Read: true,
                    corrected.Pitches[other].Gate)));
            }
        }
    }

    /// <summary>
    /// The gate at the other end: of several as far, the one that is known best beside it, and of those the one nearest the bow. That
    /// the boat is in the mirror, or begins with another gate, must not decide how sure its range is.
    /// </summary>
    private static int Opposite(CorrectedReadings corrected, int blamed, int end, Station station) =>
        Enumerable.Range(0, corrected.Pitches.Count)
            .Where(i => corrected.Pitches[i].At.Station == station && Math.Abs(Degrees(corrected, i) - Degrees(corrected, end)) <= AsFar)
            .MinBy(i => Math.Round(Apart(corrected, blamed, i).U.Degrees, Digits));

    /// <summary>How far two gates are apart, the higher less the lower.</summary>
    private static Estimate Apart(CorrectedReadings corrected, int one, int other) =>
        Degrees(corrected, one) > Degrees(corrected, other) ? corrected.Difference(one, other) : corrected.Difference(other, one);

    private static List<int> Blamed(
        CorrectedReadings corrected, Station station, double middle, double furthest, StationLimits limits)
    {
        List<int> asFar = [.. Enumerable.Range(0, corrected.Pitches.Count).Where(i =>
            corrected.Pitches[i].At.Station == station && Math.Abs(Degrees(corrected, i) - middle) >= furthest - AsFar)];
        List<int> outside = [.. asFar.Where(i =>
            Degrees(corrected, i) < limits.Lowest.Degrees - AsFar || Degrees(corrected, i) > limits.Highest.Degrees + AsFar)];
        return outside.Count > 0 ? outside : asFar;
    }

    private static double Degrees(CorrectedReadings corrected, int index) => corrected.Pitches[index].Pitch.Degrees;
}
