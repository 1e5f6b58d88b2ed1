using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;

namespace Gatewright.Words.Judged;

/// <summary>A standard and what its figures mean.</summary>
public sealed class StandardWords
{
    private readonly Wording _say;

    internal StandardWords(Wording say) => _say = say;

    /// <summary>What boats were judged by: "Judged by the standard club: catch 3° to 5°, …".</summary>
    public string Limits(Standard standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return _say.Text(
            "Standard.Limits",
            standard.Name,
            string.Join(", ", Stations.All.Select(station => Within(station, standard.At(station)))),
            _say.Figures.Brief(standard.LargestDrop),
            _say.Figures.Brief(standard.LargestRange),
            string.Join(", ", Stations.All.Select(station => Floor(station, standard.At(station)))));
    }

    /// <summary>What the boats of a shed were judged by, first the shed's own standard, then those that only some boats have.</summary>
    public IEnumerable<string> Limits(IReadOnlyList<BoatCheck> boats, Standard shed) => boats
        .GroupBy(boat => boat.Verdict.Standard)
        .Where(group => group.Key != shed)
        .Select(group => _say.Text(
            "Standard.OfBoats", string.Join(", ", group.Select(boat => boat.Verdict.Boat)), Limits(group.Key)))
        .Prepend(Limits(shed));

    /// <summary>What stands behind ±.</summary>
    public string PlusMinus => _say.Text("Standard.PlusMinus");

    /// <summary>What figures in brackets are.</summary>
    public string Brackets => _say.Text("Standard.Brackets");

    private string Within(Station station, StationLimits limits) => _say.Text(
        "Standard.Station", _say.Names.Station(station), _say.Figures.Brief(limits.Lowest.Angle), _say.Figures.Brief(limits.Highest.Angle));

    private string Floor(Station station, StationLimits limits) =>
        _say.Text("Standard.Floor", _say.Names.Station(station), _say.Figures.Brief(limits.Floor.Angle));
}
