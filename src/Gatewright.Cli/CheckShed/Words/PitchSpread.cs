using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>From which pitch to which the gates of a boat go at a station: of those read there; where none was, as expected.</summary>
/// <param name="Read">Whether any gate was read there.</param>
/// <param name="Least">The least pitch in degrees.</param>
/// <param name="Most">The greatest pitch in degrees.</param>
internal readonly record struct PitchSpread(bool Read, double Least, double Most)
{
    /// <summary>"3.5–4.5", or "4.0" when they are alike.</summary>
    public string Figures => Join("–");

    /// <summary>"3.5 to 4.5", for a sentence.</summary>
    public string Words => Join(" to ");

    public static PitchSpread At(BoatVerdict boat, Station station)
    {
        List<StationPitch> read = [.. boat.Gates.Select(gate => gate.At(station)).Where(pitch => pitch.Read)];
        List<double> degrees = [.. (read.Count > 0 ? read : boat.Gates.Select(gate => gate.At(station)))
            .Select(pitch => pitch.Pitch.Value.Degrees)];
        return new(read.Count > 0, degrees.Min(), degrees.Max());
    }

    /// <summary>The largest u of any reading, in degrees; of any expectation where nothing was read.</summary>
    public static double WidestU(BoatVerdict boat)
    {
        List<StationPitch> pitches = [.. boat.Gates.SelectMany(gate => gate.Pitches)];
        return pitches.Where(p => p.Read).DefaultIfEmpty(pitches[0]).Max(p => p.Pitch.U.Degrees);
    }

    /// <summary>Stations that were read at some gates and not at others: "finish not read at seat 3 port".</summary>
    public static IEnumerable<string> PartlyRead(BoatVerdict boat) =>
        from station in Stations.All
        let missing = boat.Gates.Where(gate => !gate.At(station).Read).ToList()
        where missing.Count > 0 && missing.Count < boat.Gates.Count
        select $"{station.Word()} not read at {string.Join(", ", missing.Select(gate => gate.Gate))}";

    private string Join(string between)
    {
        (string least, string most) = (Drawing.Figures.Degrees(Least), Drawing.Figures.Degrees(Most));
        return least == most ? least : least + between + most;
    }
}
