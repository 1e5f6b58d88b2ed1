using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>
/// Settles how a boat lay, from all its rows in one lie on one day: what some rows say of the level holds for those
/// that leave it blank, as long as it is one thing.
/// </summary>
internal sealed class LyingSettlement
{
    /// <summary>Enough to see that there are several, and to list them.</summary>
    private const int Enough = 6;

    private readonly BoatRows _boat;
    private readonly Problems _problems;
    private readonly Dictionary<HullLevel, BoatLie> _lies = [];
    private readonly List<HullLevel> _stated = [];
    private readonly Dictionary<RackRows, List<HullLevel>> _statedOnRack = [];
    private readonly List<HullLevel> _ofRacks = [];
    private bool _isFaulty;

    private LyingSettlement(BoatRows boat, Problems problems) => (_boat, _problems) = (boat, problems);

    /// <summary>Settles every lying of a boat, or reports why it cannot.</summary>
    public static void Settle(BoatRows boat, Problems problems)
    {
        foreach (IGrouping<(Lie, DateOnly?), Lying> day in boat.Lyings.GroupBy(l => (l.Key.Lie, l.Key.Date)))
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

        foreach (Lying lying in lyings.Where(l => l.Key.Level.Source == LevelSource.Blank && l.Key.Rack is not null))
        {
            SettleOnRack(lying, lying.Key.Rack!);
        }

        HullLevel[] levels = [.. _stated.Concat(_ofRacks).Distinct()];
        foreach (Lying lying in lyings.Where(l => l.Key.Level.Source == LevelSource.Blank && l.Key.Rack is null))
        {
            Settle(lying, levels, new HullLevel.ByEye());
        }
    }

    /// <summary>What a row says holds for the rows that name its rack, and where it names none, for those of every rack.</summary>
    private void State(Lying lying)
    {
        if (Level(lying.Key, lying) is not HullLevel level)
        {
            return;
        }

        lying.Settled = LieAt(lying, level);
        _stated.Add(level);
        List<HullLevel> ofRack = lying.Key.Rack is null ? AnyRack : OnRack(lying.Key.Rack);
        ofRack.Add(level);
    }

    private List<HullLevel> AnyRack { get; } = [];

    private List<HullLevel> OnRack(RackRows rack)
    {
        if (!_statedOnRack.TryGetValue(rack, out List<HullLevel>? levels))
        {
            levels = [];
            _statedOnRack.Add(rack, levels);
        }

        return levels;
    }

    private void SettleOnRack(Lying lying, RackRows rack)
    {
        HullLevel[] levels = [.. AnyRack.Concat(OnRack(rack)).Distinct().Take(Enough)];
        if (levels.Length > 0)
        {
            Settle(lying, levels, levels[0]);
        }
        else if (OfRack(rack, lying) is HullLevel level)
        {
            lying.Settled = LieAt(lying, level);
            _ofRacks.Add(level);
        }
    }

    private void Settle(Lying lying, HullLevel[] levels, HullLevel otherwise)
    {
        if (levels.Length <= 1)
        {
            lying.Settled = LieAt(lying, levels.Length == 1 ? levels[0] : otherwise);
        }
        else if (!_isFaulty)
        {
            new Reporter(_problems, lying.First).Ambiguous(_boat, lying, levels);
        }
    }

    private HullLevel? Level(LyingKey key, Lying lying) => key.Level.Source switch
    {
        LevelSource.Read => new HullLevel.Read(key.Level.Attitude),
        LevelSource.Bubble => new HullLevel.BubbleCentred(),
        LevelSource.Rack => OfRack(key.Rack!, lying),
        _ => new HullLevel.ByEye(),
    };

    private HullLevel.OfRack? OfRack(RackRows rack, Lying lying)
    {
        if (rack.On(lying.Key.Date) is Rack known)
        {
            return new(known);
        }

        _isFaulty = true;
        if (!rack.IsFaulty)
        {
            new Reporter(_problems, lying.First).RackUnknown(rack);
        }

        return null;
    }

    /// <summary>Rows that lay the same way share one object.</summary>
    private BoatLie LieAt(Lying lying, HullLevel level)
    {
        if (!_lies.TryGetValue(level, out BoatLie? lie))
        {
            lie = new(lying.Key.Lie, level, lying.Key.Date);
            _lies.Add(level, lie);
        }

        return lie;
    }
}
