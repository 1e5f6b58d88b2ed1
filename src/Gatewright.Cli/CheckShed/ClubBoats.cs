using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Cli.CheckShed;

/// <summary>The boats of a club that are in use, by name.</summary>
internal sealed class ClubBoats
{
    private readonly IReadOnlyList<string> _names;
    private readonly List<BoatRecord> _records = [];
    private readonly List<InputProblem> _warnings = [];
    private readonly Dictionary<string, Standard> _own = [];
    private readonly Dictionary<string, IReadOnlyList<GatePlace>> _gates = [];

    private ClubBoats(IReadOnlyList<string> names) => _names = names;

    /// <summary>Which boats are held, and of which nothing can be said: of those asked for.</summary>
    public IReadOnlyList<InputProblem> Warnings => _warnings;

    /// <summary>The standards that boats have of their own, by name.</summary>
    public IReadOnlyDictionary<string, Standard> OwnStandards => _own;

    /// <summary>The gates that boats have now, by name.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<GatePlace>> Gates => _gates;

    /// <summary>Those of a club.</summary>
    /// <param name="club">The club.</param>
    /// <param name="names">The boats asked for; none means all.</param>
    /// <param name="settings">How readings are uncertain.</param>
    public static ClubBoats Of(Club club, IReadOnlyList<string> names, MeasuringSettings settings)
    {
        var boats = new ClubBoats(names);
        var titles = new ThingTitles(club, Things.Boat);
        foreach ((string title, BoatView view) in BoatView.All(club)
            .Where(b => b.Records.Count > 0 && !b.IsOutOfUse)
            .Select(b => (titles[b.Key], b))
            .OrderBy(b => b.Item1, StringComparer.OrdinalIgnoreCase))
        {
            boats.Add(club, title, view, settings);
        }

        return boats;
    }

    /// <summary>The boats asked for. A name of no boat is an error.</summary>
    public IReadOnlyList<BoatRecord> Chosen(List<InputProblem> errors) =>
        [.. BoatChoice.Of(_records, "--boat", _names, errors, []).Where(IsEverRead)];

    private void Add(Club club, string title, BoatView view, MeasuringSettings settings)
    {
        BoatRecord? record = view.Record(settings);
        if (record is not null)
        {
            _records.Add(record with { Current = record.Current with { Boat = title } });
            _gates[title] = BoatGates.Of(club, view);
            if (view.Properties["standard"] is not null)
            {
                _own[title] = ClubSettings.Of(club, view);
            }
        }

        if (_names.Count > 0 && !_names.Any(name => title.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase)))
        {
            return;
        }

        _warnings.AddRange(view.Holds.Select(hold => HeldAshore.Of(title, hold)));
        if (record is null || !IsEverRead(record))
        {
            _warnings.Add(NotJudged.Of(title, record is null ? "has no class yet, and cannot be judged" : "was never read"));
        }
    }

    private static bool IsEverRead(BoatRecord record) => record.Current.Readings.Count + record.Old.Count > 0;
}
