using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Gatewright.Core.Checking;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Server.Boats;

/// <summary>The boats of a club and how they are judged, worked out once for each state of the club.</summary>
internal sealed class ShedVerdicts
{
    private static readonly ConditionalWeakTable<Club, ShedVerdicts> Known = [];

    private readonly Club _club;
    private readonly CheckSettings _settings;
    private readonly ConcurrentDictionary<string, Lazy<BoatStanding?>> _boats = [];

    private ShedVerdicts(Club club)
    {
        _club = club;
        _settings = ClubSettings.Of(club);
    }

    /// <summary>Those of a club as it is.</summary>
    public static ShedVerdicts Of(Club club) => Known.GetValue(club, c => new(c));

    /// <summary>The keys of its boats in use.</summary>
    public IReadOnlyList<string> Keys =>
        [.. _club.Subjects.Where(s => s.Thing == Things.Boat && s.Key.Length > 0).Select(s => s.Key).Order(StringComparer.Ordinal)];

    /// <summary>A boat; null when there is none of that key.</summary>
    public BoatStanding? Boat(string key) => _boats.GetOrAdd(key, k => new(() => Stand(k))).Value;

    /// <summary>All boats in use, worst first.</summary>
    public IReadOnlyList<BoatStanding> All =>
        [.. Keys.AsParallel().Select(Boat).OfType<BoatStanding>()
            .Where(b => !b.IsOutOfUse)
            .OrderByDescending(b => b.Urgency).ThenBy(b => b.View.Name, StringComparer.OrdinalIgnoreCase)];

    private BoatStanding? Stand(string key)
    {
        var view = new BoatView(_club, key);
        if (view.Records.Count == 0)
        {
            return null;
        }

        BoatRecord? record = view.Record(_settings.Diagnosing.Measuring);
        CheckSettings settings = _settings with { Standard = ClubSettings.Of(_club, view) };
        return new(view, record is { Current.Readings.Count: > 0 } ? record.Check(settings) : null);
    }
}
