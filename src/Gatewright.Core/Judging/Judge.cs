using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Judging;

/// <summary>Judges a boat's readings by a standard.</summary>
/// <param name="standard">The standard.</param>
/// <param name="rule">How sure one must be.</param>
/// <param name="settings">Where the stations are.</param>
/// <exception cref="ArgumentException">The standard's limits do not rise from floor to lowest to highest at a station.</exception>
public sealed class Judge(Standard standard, DecisionRule rule, MeasuringSettings settings)
{
    private readonly Standard _standard = InOrder(standard);

    /// <summary>
    /// Judges every gate of which something was read; the worst makes the boat's verdict. A boat of which no gate was
    /// read is `unsure`: nothing speaks against it, and nothing for it.
    /// </summary>
    /// <param name="boat">What was read.</param>
    /// <param name="corrected">Its gate readings, corrected.</param>
    /// <param name="forecast">What to expect where a gate was not read; asked for only there.</param>
    /// <param name="changes">The gates and pins that read otherwise than on the days before.</param>
    public BoatVerdict Boat(
        BoatReadings boat, CorrectedReadings corrected, IPitchForecast forecast, IReadOnlyList<SeenChange>? changes = null)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(corrected);
        ArgumentNullException.ThrowIfNull(forecast);
        List<GatePlace> places = Places(boat.Readings);
        List<(GatePlace Gate, Reason Reason)> ranges = RangeReasons.Of(corrected, _standard, rule);
        Verdict worst = places.Count == 0 ? Verdict.Unsure : Verdict.Good;
        var gates = new List<GateVerdict>(places.Count);
        foreach (GatePlace place in places)
        {
            GateVerdict gate = Gate(place, boat.Class, corrected, forecast, ranges, [.. changes?.Where(c => c.Gate == place) ?? []]);
            worst = Verdicts.Worse(worst, gate.Verdict);
            gates.Add(gate);
        }

        return new(boat.Boat, boat.Class, _standard, worst, gates, MissingGate.Of(boat.Class, places));
    }

    private static Standard InOrder(Standard standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        foreach (Station station in Stations.All)
        {
            StationLimits limits = standard.At(station);
            if (!limits.AreInOrder)
            {
                throw new ArgumentException(
                    $"Limits must rise from the floor to the lowest to the highest pitch: those of {standard.Name} "
                        + $"{station.Phrase()}, {limits.Floor}, {limits.Lowest}, {limits.Highest}, do not.",
                    nameof(standard));
            }
        }

        return standard;
    }

    /// <summary>The gates of which something was read, from the bow. A sleeve is the oar's, and says nothing of its gate.</summary>
    private static List<GatePlace> Places(IReadOnlyList<Reading> readings)
    {
        var places = new List<GatePlace>();
        for (int i = 0; i < readings.Count; i++)
        {
            int at = readings[i].Item == ReadItem.Sleeve ? 0 : places.BinarySearch(readings[i].Gate);
            if (at < 0)
            {
                places.Insert(~at, readings[i].Gate);
            }
        }

        return places;
    }

    private GateVerdict Gate(
        GatePlace place,
        BoatClass boatClass,
        CorrectedReadings corrected,
        IPitchForecast forecast,
        List<(GatePlace Gate, Reason Reason)> ranges,
        List<SeenChange> changes)
    {
        var reasons = new List<Reason>();
        var pitches = new List<StationPitch>(Stations.All.Count);
        StationAngles angles = settings.Angles(boatClass.Rowing);
        foreach (Station station in Stations.All)
        {
            int index = corrected.IndexOf(place, station);
            pitches.Add(index >= 0
                ? Read(corrected.Pitches[index], station, reasons)
                : Expected(forecast.At(place, angles.At(station)), angles.Point(station), station, reasons));
        }

        foreach (CorrectedPitch pitch in corrected.Pitches)
        {
            if (pitch.At.Station is null && pitch.Gate == place)
            {
                pitches.Add(AsRead(pitch));
            }
        }

        foreach (SeenChange change in changes)
        {
            AddChange(change, reasons);
        }

        AddFormer(changes, pitches.Exists(p => p.Read), reasons);
        AddDrop(place, corrected, reasons);
        foreach ((GatePlace gate, Reason reason) in ranges)
        {
            if (gate == place)
            {
                reasons.Add(reason);
            }
        }

        List<Reason> worstFirst = [.. reasons.OrderByDescending(r => r.Verdict)];
        return new(place, worstFirst.Count == 0 ? Verdict.Good : worstFirst[0].Verdict, worstFirst, pitches);
    }

    private StationPitch Read(CorrectedPitch pitch, Station station, List<Reason> reasons)
    {
        StationLimits limits = _standard.At(station);
        (double value, double u) = (pitch.Pitch.Degrees, pitch.Budget.CombinedDegrees);
        AddFloor(limits.Floor, DecisionRule.Below(limits.Floor, value, u), station, pitch.Estimate, read: true, reasons);
        AddRepeats(pitch, station, reasons);
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

    /// <summary>
    /// Of two readings of one gate that do not agree, one is a slip, and nobody can tell which: their mean proves no
    /// more than either, so whatever it says the station is to be read again.
    /// </summary>
    private void AddRepeats(CorrectedPitch pitch, Station station, List<Reason> reasons)
    {
        if (pitch.RepeatsApart is { } apart)
        {
            Angle allowed = Angle.FromDegrees(RepeatedReading.ApartLimit(apart.U.Degrees, pitch.Repeats));
            double probability = RepeatedReading.ProbabilityCloser(apart.Value.Degrees, apart.U.Degrees, pitch.Repeats);
            reasons.Add(new(Verdict.Unsure, ReasonKind.Repeats, station, apart, allowed, probability, Read: true));
            AddDoubt(pitch.Lowest!.Value, station, reasons);
        }
    }

    /// <summary>
    /// A gate or pin that was read otherwise once since may have been changed, or misread: until it was read again nobody can tell.
    /// </summary>
    private static void AddChange(SeenChange change, List<Reason> reasons)
    {
        if (change is { IsConfirmed: false, At.Station: { } station })
        {
            (double apart, double u) = (change.Apart.Value.Degrees, change.Apart.U.Degrees);
            Angle allowed = Angle.FromDegrees(RepeatedReading.Apart * u);
            double probability = u > 0 ? 1 - (2 * Normal.Above(Math.Abs(apart) / u)) : 1;
            reasons.Add(new(Verdict.Unsure, ReasonKind.Changed, station, change.Apart, allowed, probability, Read: true)
            {
                Item = change.Item,
                Before = change.Before,
            });
        }
    }

    /// <summary>
    /// While it is not sure that a gate was changed, or its face was not read since, what the face read before may still be so: a
    /// pin that reads otherwise brings out no gate that was under its floor.
    /// </summary>
    /// <remarks>A face that reads otherwise tells more of the gate than its pin does: where it does, it decides alone.</remarks>
    private void AddFormer(List<SeenChange> changes, bool isFaceRead, List<Reason> reasons)
    {
        SeenChange? face = changes.Find(c => c.Item == ReadItem.Gate);
        bool isSure = isFaceRead && (face?.IsConfirmed ?? changes.TrueForAll(c => c.IsConfirmed));
        if (changes is not [{ Faces: var faces }, ..] || isSure)
        {
            return;
        }

        foreach (FormerFace former in faces)
        {
            if (former.At.Station is { } station)
            {
                AddDoubt(former.Pitch, station, reasons, station == face?.At.Station ? null : former.Day);
            }
        }
    }

    /// <summary>
    /// Of two readings that contradict each other the lower may be the right one: where it does not show that the pitch lies above
    /// the floor, nothing does.
    /// </summary>
    private void AddDoubt(Estimate reading, Station station, List<Reason> reasons, DateOnly? before = null)
    {
        Pitch floor = _standard.At(station).Floor;
        double below = DecisionRule.Below(floor, reading.Value.Degrees, reading.U.Degrees);
        if (rule.Floor(below) != Verdict.Good && !reasons.Exists(r => r.Kind == ReasonKind.Floor && r.Station == station && r.Read))
        {
            reasons.Add(new(Verdict.Unsure, ReasonKind.Floor, station, reading, floor.Angle, below, Read: true)
            {
                IsOneReading = true,
                Before = before,
            });
        }
    }

    private static StationPitch AsRead(CorrectedPitch pitch) =>
        new(pitch.At, true, pitch.Estimate, pitch.Repeats, pitch.RepeatsDisagree);

    /// <summary>A station that was not read is judged by its floor alone: quality is judged where it was seen.</summary>
    private StationPitch Expected(GaussianMixture forecast, StrokePoint at, Station station, List<Reason> reasons)
    {
        Pitch floor = _standard.At(station).Floor;
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
        (Verdict verdict, double outside) = rule.AtMost(drop, _standard.LargestDrop);
        if (verdict != Verdict.Good)
        {
            reasons.Add(new(verdict, ReasonKind.Drop, Station.Finish, drop, _standard.LargestDrop, outside, Read: true));
        }
    }
}
