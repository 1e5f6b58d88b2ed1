using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Words.Judged;

/// <summary>From where to where a boat's pitches go, in degrees.</summary>
public sealed class SpreadWords
{
    private readonly Wording _say;

    internal SpreadWords(Wording say) => _say = say;

    /// <summary>"catch 3.5 to 4.5, abeam 4.0, finish not read, expected 3.9 to 4.1; each to ± 0.4° at most".</summary>
    public string Of(BoatVerdict boat)
    {
        IEnumerable<string> stations = Stations.All.Select(station => At(station, PitchSpread.At(boat, station))).Concat(PartlyRead(boat));
        return _say.Text("Spread.Within", string.Join(", ", stations), _say.Figures.Degrees(PitchSpread.WidestU(boat)));
    }

    /// <summary>Stations that were read at some gates and not at others: "finish not read at seat 3 port".</summary>
    public IEnumerable<string> PartlyRead(BoatVerdict boat) => PitchSpread.PartlyRead(boat).Select(missing =>
        _say.Text("Spread.PartlyRead", _say.Names.Station(missing.Station), _say.Names.Gates(missing.Gates)));

    private string At(Station station, PitchSpread spread) =>
        _say.Text(spread.Read ? "Pitch.At" : "Pitch.NotRead", _say.Names.Station(station), Range(spread));

    /// <summary>"3.5 to 4.5", or "4.0" when they are alike.</summary>
    private string Range(PitchSpread spread)
    {
        (string least, string most) = (_say.Figures.Degrees(spread.Least), _say.Figures.Degrees(spread.Most));
        return least == most ? least : _say.Text("Spread.Range", least, most);
    }
}
