using System.Collections.Concurrent;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Standing;

/// <summary>
/// The boats of a club and how they are judged: each worked out when it is first asked for, and kept for as long as
/// nothing that went into it changes.
/// </summary>
/// <remarks>
/// Those who ask while something is worked out wait without holding a thread: at 200 requests a second every thread
/// would soon wait for a boat, and none be left to work it out.
/// </remarks>
public sealed class ShedVerdicts
{
    private readonly Club _club;
    private readonly Lazy<Task<ChancesView>>? _count;
    private readonly Lazy<Task<PriorChances>> _chances;
    private readonly Lazy<Task<CheckSettings>> _settings;
    private readonly Lazy<Shelves> _ofAll;
    private readonly Dictionary<string, JudgedBoat> _before;
    private readonly ConcurrentDictionary<string, Lazy<Task<JudgedBoat?>>> _boats = [];
    private readonly Standard? _instead;

    private ShedVerdicts(
        Club club, Lazy<Task<ChancesView>>? count, Lazy<Task<PriorChances>> chances, Dictionary<string, JudgedBoat> before, Standard? instead = null)
    {
        (_club, _count, _chances, _before, _instead) = (club, count, chances, before, instead);
        _settings = new(() => Task.Run(async () => ClubSettings.Of(club, await chances.Value.ConfigureAwait(false))));
        _ofAll = new(() => Shelves.OfAll(club));
    }

    private ShedVerdicts(Club club, Lazy<Task<ChancesView>> count, Dictionary<string, JudgedBoat> before, Standard? instead = null)
        : this(club, count, new(async () => ClubSettings.Chances(await count.Value.ConfigureAwait(false))), before, instead)
    {
    }

    /// <summary>The keys of its boats.</summary>
    public IReadOnlyList<string> Keys => [.. BoatView.Keys(_club)];

    /// <summary>The boats of a club of which nothing is worked out yet.</summary>
    public static ShedVerdicts Of(Club club) => new(club, Counted(club, null), []);

    /// <summary>The boats of a club, all judged by a standard in place of their own.</summary>
    public static ShedVerdicts By(Standard standard, Club club) => new(club, Counted(club, null), [], standard);

    /// <summary>The same, judged by chances that somebody else counts: asked for once, when the first boat is.</summary>
    public static ShedVerdicts Of(Club club, Func<Task<PriorChances>> chances) => new(club, null, new(chances), []);

    /// <summary>The boats of this club once it has grown.</summary>
    /// <param name="grown">The club with the entries that came.</param>
    /// <param name="teaches">Whether any of those may change its chances.</param>
    public ShedVerdicts With(Club grown, bool teaches) => teaches
        ? new(grown, Counted(grown, _count is { IsValueCreated: true, Value: { IsCompletedSuccessfully: true, Result: var counted } } ? counted : null), Known())
        : new(grown, _count, _chances, Known());

    /// <summary>The boats of this club once it has grown, judged by chances that somebody else has counted.</summary>
    public ShedVerdicts With(Club grown, PriorChances chances) => new(grown, null, new(() => Task.FromResult(chances)), Known());

    /// <summary>All boats in use, worst first.</summary>
    public async Task<IReadOnlyList<BoatStanding>> AllAsync()
    {
        BoatStanding?[] all = await Task.WhenAll(Keys.Select(BoatAsync)).ConfigureAwait(false);
        return [.. all.OfType<BoatStanding>()
            .Where(b => !b.IsOutOfUse)
            .OrderByDescending(b => b.Urgency).ThenBy(b => b.View.Name, StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>A boat; null when there is none of that key.</summary>
    public async Task<BoatStanding?> BoatAsync(string key)
    {
        Lazy<Task<JudgedBoat?>> boat = _boats.GetOrAdd(key, k => new(() => Task.Run(() => JudgeAsync(k))));
        return (await boat.Value.ConfigureAwait(false))?.Standing;
    }

    private async Task<JudgedBoat?> JudgeAsync(string key)
    {
        CheckSettings settings = await _settings.Value.ConfigureAwait(false);
        return _before.GetValueOrDefault(key)?.In(_club, settings, _ofAll.Value) ?? JudgedBoat.Of(_club, key, settings, _ofAll.Value, _instead);
    }

    /// <summary>What was not asked for since it was last worked out may yet hold: it is looked at when it is asked for again.</summary>
    private Dictionary<string, JudgedBoat> Known()
    {
        var known = new Dictionary<string, JudgedBoat>(_before);
        foreach ((string key, Lazy<Task<JudgedBoat?>> boat) in _boats)
        {
            if (boat is { IsValueCreated: true, Value: { IsCompletedSuccessfully: true, Result: { } judged } })
            {
                known[key] = judged;
            }
        }

        return known;
    }

    /// <summary>What the club's own finished jobs have taught, counted when first asked for: where it has grown since it was counted before.</summary>
    private static Lazy<Task<ChancesView>> Counted(Club club, ChancesView? before) => new(() => Task.Run(() => new ChancesView(club, before)));
}
