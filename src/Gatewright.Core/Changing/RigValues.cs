using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>A rig's values from what was measured and from what was read.</summary>
public static class RigValues
{
    /// <summary>Of the measures; each with the last day on which it was taken.</summary>
    public static IReadOnlyList<RigValue> Of(IReadOnlyList<RigReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var values = new List<RigValue>();
        foreach (RigFigure figure in RigFigures.Of(readings).All)
        {
            DateOnly? day = null;
            foreach (RigReading reading in readings)
            {
                bool isOfIt = figure.IsComputed
                    ? reading.Place.Seat == figure.Place.Seat && reading.Measure is RigMeasure.Spread or RigMeasure.Span or RigMeasure.Inboard
                    : reading.Measure == figure.Measure && reading.Place == figure.Place;
                day = isOfIt && (day is null || reading.Day > day) ? reading.Day : day;
            }

            values.Add(new(RigItems.Of(figure.Measure), figure.Place, figure.Value, !figure.IsComputed && !figure.IsSet, day));
        }

        return values;
    }

    /// <summary>
    /// Of a check: the pitch at each station as read, or as is to be expected where it was not; the pin's leans and the pitch in the
    /// gate as they probably are.
    /// </summary>
    public static IReadOnlyList<RigValue> Of(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        var values = new List<RigValue>();
        foreach (Judging.GateVerdict gate in check.Verdict.Gates)
        {
            var place = new RigPlace(gate.Gate.Seat, gate.Gate.Side);
            (DateOnly? day, string? gauge) = Source(check, gate.Gate);
            foreach (Station station in Stations.All)
            {
                Judging.StationPitch pitch = gate.At(station);
                int index = check.Corrected.IndexOf(gate.Gate, station);
                double zero = index < 0 ? 0 : check.Corrected.Pitches[index].Budget.GaugeZero;
                values.Add(new(Item(station), place, Figure(pitch.Pitch), pitch.Read, day, index < 0 ? null : gauge, zero));
            }

            GateBelief belief = check.Diagnosis.Belief(gate.Gate);
            values.Add(Believed(RigItem.GatePitch, belief.Mean.GatePitch.Degrees, belief, 0));
            values.Add(Believed(RigItem.LeanAft, belief.Mean.Pin.Aft.Degrees, belief, 1));
            values.Add(Believed(RigItem.LeanOut, belief.Mean.Pin.Out.Degrees, belief, 2));

            RigValue Believed(RigItem item, double mean, GateBelief of, int row) =>
                new(item, place, new(mean, Math.Sqrt(Math.Max(0, of.Covariance[row, row]))), false, day);
        }

        return values;
    }

    private static RigItem Item(Station station) => station switch
    {
        Station.Catch => RigItem.PitchCatch,
        Station.Abeam => RigItem.PitchAbeam,
        _ => RigItem.PitchFinish,
    };

    private static RigEstimate Figure(Estimate estimate) => new(estimate.Value.Degrees, estimate.U.Degrees);

    /// <summary>The last day on which a gate was read, and the gauge, if it was one alone.</summary>
    private static (DateOnly? Day, string? Gauge) Source(BoatCheck check, GatePlace gate)
    {
        DateOnly? day = null;
        string? gauge = null;
        bool isOne = true;
        foreach (Reading reading in check.Readings.Readings)
        {
            if (reading.Gate == gate)
            {
                day = day is null || reading.Lie.Date > day ? reading.Lie.Date : day;
                isOne &= gauge is null || gauge == reading.Gauge.Name;
                gauge = reading.Gauge.Name;
            }
        }

        return (day, isOne ? gauge : null);
    }
}
