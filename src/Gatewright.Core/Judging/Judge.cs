using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Judging;

/// <summary>Judges a boat's readings by a standard.</summary>
/// <param name="standard">The standard.</param>
/// <param name="rule">How sure one must be.</param>
/// <param name="settings">Where the stations are.</param>
public sealed class Judge(Standard standard, DecisionRule rule, MeasuringSettings settings)
{
    /// <summary>Judges every gate of which something was read; the worst makes the boat's verdict.</summary>
    /// <param name="boat">What was read.</param>
    /// <param name="corrected">Its gate readings, corrected.</param>
    /// <param name="forecast">What to expect where a gate was not read; asked for only there.</param>
    public BoatVerdict Boat(BoatReadings boat, CorrectedReadings corrected, IPitchForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(corrected);
        ArgumentNullException.ThrowIfNull(forecast);
        List<GatePlace> places = [.. boat.Readings
            .Where(r => r.Item != ReadItem.Sleeve)
            .Select(r => r.Gate)
            .Distinct()
            .Order()];
        ILookup<GatePlace, Reason> ranges = Ranges(corrected);
        var gates = new List<GateVerdict>(places.Count);
        foreach (GatePlace place in places)
        {
            gates.Add(Gate(place, boat.Class, corrected, forecast, ranges[place]));
        }

        Verdict worst = gates.Aggregate(Verdict.Good, (sum, gate) => Verdicts.Worse(sum, gate.Verdict));
        return new(boat.Boat, boat.Class, standard, worst, gates, MissingGate.Of(boat.Class, places));
    }

    private GateVerdict Gate(
        GatePlace place, BoatClass boatClass, CorrectedReadings corrected, IPitchForecast forecast, IEnumerable<Reason> ranges)
    {
        var reasons = new List<Reason>();
        var pitches = new List<StationPitch>();
        StationAngles angles = settings.Angles(boatClass.Rowing);
        foreach (Station station in Stations.All)
        {
            int index = corrected.IndexOf(place, station);
            pitches.Add(index >= 0
                ? Read(corrected.Pitches[index], station, reasons)
                : Expected(forecast.At(place, angles.At(station)), angles.Point(station), station, reasons));
        }

        pitches.AddRange(corrected.Pitches
            .Where(p => p.Gate == place && p.At.Station is null)
            .Select(p => AsRead(p)));
        AddDrop(place, corrected, reasons);
        reasons.AddRange(ranges);

        List<Reason> worstFirst = [.. reasons.OrderByDescending(r => r.Verdict)];
        return new(place, worstFirst.Count == 0 ? Verdict.Good : worstFirst[0].Verdict, worstFirst, pitches);
    }

    private StationPitch Read(CorrectedPitch pitch, Station station, List<Reason> reasons)
    {
        StationLimits limits = standard.At(station);
        (double value, double u) = (pitch.Pitch.Degrees, pitch.Budget.CombinedDegrees);
        AddFloor(limits.Floor, DecisionRule.Below(limits.Floor, value, u), station, pitch.Estimate, read: true, reasons);
        (Verdict verdict, double outside) = rule.Limits(value, u, limits.Lowest.Degrees, limits.Highest.Degrees);
        if (verdict != Verdict.Good)
        {
            bool below = value < limits.Lowest.Degrees;
            reasons.Add(new(
                verdict,
                below ? ReasonKind.BelowLimit : ReasonKind.AboveLimit,
                station,
                pitch.Estimate,
                (below ? limits.Lowest : limits.Highest).Angle,
                outside,
                Read: true));
        }

        return AsRead(pitch);
    }

    private static StationPitch AsRead(CorrectedPitch pitch) =>
        new(pitch.At, true, pitch.Estimate, pitch.Repeats, pitch.RepeatsDisagree);

    /// <summary>A station that was not read is judged by its floor alone: quality is judged where it was seen.</summary>
    private StationPitch Expected(GaussianMixture forecast, StrokePoint at, Station station, List<Reason> reasons)
    {
        Pitch floor = standard.At(station).Floor;
        Estimate estimate = Estimate.FromDegrees(forecast.Mean, forecast.Sd);
        AddFloor(floor, 1 - forecast.Above(floor.Degrees), station, estimate, read: false, reasons);
        return new(at, false, estimate, 0, false);
    }

    private void AddFloor(Pitch floor, double below, Station station, Estimate value, bool read, List<Reason> reasons)
    {
        Verdict verdict = rule.Floor(below);
        if (verdict != Verdict.Good)
        {
            reasons.Add(new(verdict, ReasonKind.Floor, station, value, floor.Angle, below, read));
        }
    }

    private void AddDrop(GatePlace place, CorrectedReadings corrected, List<Reason> reasons)
    {
        int atCatch = corrected.IndexOf(place, Station.Catch);
        int atFinish = corrected.IndexOf(place, Station.Finish);
        if (atCatch < 0 || atFinish < 0)
        {
            return;
        }

        Estimate drop = corrected.Difference(atCatch, atFinish);
        (Verdict verdict, double outside) = AtMost(drop, standard.LargestDrop);
        if (verdict != Verdict.Good)
        {
            reasons.Add(new(verdict, ReasonKind.Drop, Station.Finish, drop, standard.LargestDrop, outside, Read: true));
        }
    }

    private (Verdict Verdict, double Outside) AtMost(Estimate value, Angle largest) =>
        rule.Limits(value.Value.Degrees, value.U.Degrees, double.NegativeInfinity, largest.Degrees);

    /// <summary>
    /// Too wide a range is laid to the gate furthest from the middle of the boat, to both ends when they are as far:
    /// that is where mending one gate does most.
    /// </summary>
    private ILookup<GatePlace, Reason> Ranges(CorrectedReadings corrected)
    {
        var reasons = new List<(GatePlace Gate, Reason Reason)>();
        foreach (Station station in Stations.All)
        {
            List<int> read = [.. Enumerable.Range(0, corrected.Pitches.Count)
                .Where(i => corrected.Pitches[i].At.Station == station)
                .OrderBy(i => corrected.Pitches[i].Pitch.Degrees)];
            if (read.Count < 2)
            {
                continue;
            }

            Estimate range = corrected.Difference(read[^1], read[0]);
            (Verdict verdict, double outside) = AtMost(range, standard.LargestRange);
            if (verdict == Verdict.Good)
            {
                continue;
            }

            double middle = Middle(corrected, read);
            CorrectedPitch high = corrected.Pitches[read[^1]];
            CorrectedPitch low = corrected.Pitches[read[0]];
            double above = high.Pitch.Degrees - middle;
            double under = middle - low.Pitch.Degrees;
            Reason Against(CorrectedPitch other) =>
                new(verdict, ReasonKind.Range, station, range, standard.LargestRange, outside, Read: true, other.Gate);
            if (above >= under - 1e-9)
            {
                reasons.Add((high.Gate, Against(low)));
            }

            if (under >= above - 1e-9)
            {
                reasons.Add((low.Gate, Against(high)));
            }
        }

        return reasons.ToLookup(r => r.Gate, r => r.Reason);
    }

    private static double Middle(CorrectedReadings corrected, List<int> sorted)
    {
        int half = sorted.Count / 2;
        double upper = corrected.Pitches[sorted[half]].Pitch.Degrees;
        return sorted.Count % 2 == 1 ? upper : (upper + corrected.Pitches[sorted[half - 1]].Pitch.Degrees) / 2;
    }
}
