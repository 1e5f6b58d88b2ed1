using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Words.Judged;

/// <summary>From where to where the gates of a boat go at a station: of those read there; where none was, as expected.</summary>
/// <param name="Read">Whether any gate was read there.</param>
/// <param name="Least">The least pitch in degrees.</param>
/// <param name="Most">The greatest pitch in degrees.</param>
public readonly record struct PitchSpread(bool Read, double Least, double Most)
{
    /// <summary>The spread of a boat's gates at a station.</summary>
    public static PitchSpread At(BoatVerdict boat, Station station)
    {
        ArgumentNullException.ThrowIfNull(boat);
        List<StationPitch> read = [.. boat.Gates.Select(gate => gate.At(station)).Where(pitch => pitch.Read)];
        List<double> degrees = [.. (read.Count > 0 ? read : boat.Gates.Select(gate => gate.At(station)))
            .Select(pitch => pitch.Pitch.Value.Degrees)];
        return new(read.Count > 0, degrees.Min(), degrees.Max());
    }

    /// <summary>The largest u of any reading, in degrees; of any expectation where nothing was read.</summary>
    public static double WidestU(BoatVerdict boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        List<StationPitch> pitches = [.. boat.Gates.SelectMany(gate => gate.Pitches)];
        return pitches.Where(p => p.Read).DefaultIfEmpty(pitches[0]).Max(p => p.Pitch.U.Degrees);
    }

    /// <summary>Stations that were read at some gates and not at others, with the gates where they were not.</summary>
    public static IEnumerable<(Station Station, IReadOnlyList<GatePlace> Gates)> PartlyRead(BoatVerdict boat) =>
        from station in Stations.All
        let missing = boat.Gates.Where(gate => !gate.At(station).Read).Select(gate => gate.Gate).ToList()
        where missing.Count > 0 && missing.Count < boat.Gates.Count
        select (station, (IReadOnlyList<GatePlace>)missing);
}
