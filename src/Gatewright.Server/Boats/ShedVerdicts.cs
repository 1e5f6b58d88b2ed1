using System.Collections.Concurrent;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Server.Boats;

/// <summary>
/// The boats of a club and how they are judged: each worked out when it is first asked for, and kept for as long as
/// nothing that went into it changes.
/// </summary>
internal sealed class ShedVerdicts
{
    private readonly Club _club;
    private readonly Lazy<PriorChances> _chances;
    private readonly Lazy<CheckSettings> _settings;
    private readonly Lazy<Shelves> _ofAll;
    private readonly Dictionary<string, JudgedBoat> _before;
    private readonly ConcurrentDictionary<string, Lazy<JudgedBoat?>> _boats = [];

    private ShedVerdicts(Club club, Lazy<PriorChances> chances, Dictionary<string, JudgedBoat> before)
    {
        (_club, _chances, _before) = (club, chances, before);
        _settings = new(() => ClubSettings.Of(club, chances.Value));
        _ofAll = new(() => Shelves.OfAll(club));
    }

    /// <summary>The keys of its boats.</summary>
    public IReadOnlyList<string> Keys =>
        [.. _club.Subjects.Where(s => s.Thing == Things.Boat && s.Key.Length > 0).Select(s => s.Key).Order(StringComparer.Ordinal)];

    /// <summary>All boats in use, worst first.</summary>
    public IReadOnlyList<BoatStanding> All =>
        [.. Keys.AsParallel().Select(Boat).OfType<BoatStanding>()
            .Where(b => !b.IsOutOfUse)
            .OrderByDescending(b => b.Urgency).ThenBy(b => b.View.Name, StringComparer.OrdinalIgnoreCase)];

    /// <summary>The boats of a club of which nothing is worked out yet.</summary>
    public static ShedVerdicts Of(Club club) => new(club, ClubSettings.Chances(club), []);

    /// <summary>The boats of this club once it has grown.</summary>
    /// <param name="grown">The club with the entries that came.</param>
    /// <param name="teaches">Whether any of those may change its chances.</param>
    public ShedVerdicts With(Club grown, bool teaches)
    {
        // What was not asked for since it was last worked out may yet hold: it is looked at when it is asked for again.
        var before = new Dictionary<string, JudgedBoat>(_before);
        foreach ((string key, Lazy<JudgedBoat?> boat) in _boats)
        {
            if (boat is { IsValueCreated: true, Value: { } judged })
            {
                before[key] = judged;
            }
        }

        return new(grown, teaches ? ClubSettings.Chances(grown) : _chances, before);
    }

    /// <summary>A boat; null when there is none of that key.</summary>
    public BoatStanding? Boat(string key) => _boats.GetOrAdd(key, k => new(() => Judge(k))).Value?.Standing;

    private JudgedBoat? Judge(string key) =>
        _before.GetValueOrDefault(key)?.In(_club, _settings.Value, _ofAll.Value)
        ?? JudgedBoat.Of(_club, key, _settings.Value, _ofAll.Value);
}
