using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>
/// Settles how a boat lay, from all its rows in one lie on one day with one mark: what some rows say of the level holds for
/// those that leave it blank, as long as it is one thing.
/// </summary>
internal sealed class LyingSettlement
{
    /// <summary>Enough to see that there are several, and to list them.</summary>
    private const int Enough = 6;

    private readonly BoatRows _boat;
    private readonly Problems _problems;
    private readonly StatedLevel _level;
    private readonly Dictionary<HullLevel, BoatLie> _lies = [];
    private readonly List<HullLevel> _stated = [];
    private readonly List<HullLevel> _statedOnNoRack = [];
    private readonly Dictionary<RackRows, List<HullLevel>> _statedOnRack = [];

    private LyingSettlement(BoatRows boat, Problems problems) =>
        (_boat, _problems, _level) = (boat, problems, new(problems));

    /// <summary>Settles every lying of a boat, or reports why it cannot.</summary>
    public static void Settle(BoatRows boat, Problems problems)
    {
        if (boat.Lyings.Count == 1)
        {
            Lying only = boat.Lyings.First();
            only.Settled = new StatedLevel(problems).Of(only) is HullLevel level ? LieOf(only, level) : null;
            return;
        }

        foreach (IGrouping<(Lie, DateOnly?, string?), Lying> day in boat.Lyings.GroupBy(l => (l.Key.Lie, l.Key.Date, l.Key.Mark)))
        {
            new LyingSettlement(boat, problems).Settle([.. day]);
        }
    }

    private void Settle(Lying[] lyings)
    {
        foreach (Lying lying in lyings.Where(l => l.Key.Level.Source != LevelSource.Blank))
        {
            State(lying);
        }

        List<HullLevel> levels = [.. _stated];
        foreach (Lying lying in lyings.Where(l => l.Key.Level.Source == LevelSource.Blank && l.Key.Rack is not null))
        {
            Settle(lying, [.. _statedOnNoRack.Concat(StatedOn(lying.Key.Rack!)).Distinct().Take(Enough)]);
            levels.AddRange(lying.Settled is null ? [] : [lying.Settled.Level]);
        }

        HullLevel[] all = [.. levels.Distinct().Take(Enough)];
        foreach (Lying lying in lyings.Where(l => l.Key.Level.Source == LevelSource.Blank && l.Key.Rack is null))
        {
            Settle(lying, all);
        }
    }

    /// <summary>What a row says holds for the rows that name its rack, and where it names none, for those of every rack.</summary>
    private void State(Lying lying)
    {
        if (_level.Of(lying) is not HullLevel level)
        {
            return;
        }

        lying.Settled = Shared(lying, level);
        _stated.Add(level);
        List<HullLevel> where = lying.Key.Rack is null ? _statedOnNoRack : StatedOn(lying.Key.Rack);
        where.Add(level);
    }

    private List<HullLevel> StatedOn(RackRows rack)
    {
        if (!_statedOnRack.TryGetValue(rack, out List<HullLevel>? levels))
        {
            levels = [];
            _statedOnRack.Add(rack, levels);
        }

        return levels;
    }

    /// <summary>Settles rows that leave the level blank, from what other rows say of it.</summary>
    private void Settle(Lying lying, HullLevel[] others)
    {
        if (others.Length > 1)
        {
            new Reporter(_problems, lying.First).Ambiguous(_boat, lying, others);
        }
        else if ((others.Length == 1 ? others[0] : _level.Of(lying)) is HullLevel level)
        {
            lying.Settled = Shared(lying, level);
        }
    }

    /// <summary>Rows that lay the same way share one object.</summary>
    private BoatLie Shared(Lying lying, HullLevel level)
    {
        if (!_lies.TryGetValue(level, out BoatLie? lie))
        {
            lie = LieOf(lying, level);
            _lies.Add(level, lie);
        }

        return lie;
    }

    private static BoatLie LieOf(Lying lying, HullLevel level) => new(lying.Key.Lie, level, lying.Key.Date, lying.Key.Mark);
}
