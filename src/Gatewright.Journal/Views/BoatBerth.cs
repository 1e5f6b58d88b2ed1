using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Views;

/// <summary>Where a boat lies in the shed, and how it is usually laid to be read.</summary>
/// <param name="Rack">The rack's key; null while none is known.</param>
/// <param name="Lie">Upright or inverted, as it was last laid.</param>
/// <param name="Level">How its level was last known; null while it was never laid.</param>
/// <param name="Last">How it was last laid; null for never.</param>
public sealed record BoatBerth(string? Rack, Lie Lie, LevelBasis? Level, BoatLaid? Last)
{
    /// <summary>The berth of a boat: what was set for it, else what was true of it last.</summary>
    public static BoatBerth Of(BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        BoatLaid? last = LaidLast.Of(boat.Records.Select(r => r.As<BoatLaid>()).OfType<BoatLaid>());
        string? rack = RackOf(boat);
        Lie lie = last?.Lie ?? boat.Properties["lie"] switch
        {
            "upright" => Lie.Upright,
            "inverted" => Lie.Inverted,
            _ => rack is null ? Lie.Upright : Lie.Inverted,
        };
        return new(rack, lie, last?.Level, last);
    }

    /// <summary>
    /// What was set holds, and of one that was taken off its rack that it lies on none: until it is laid on one to be read.
    /// </summary>
    private static string? RackOf(BoatView boat)
    {
        FieldValue? set = boat.Properties.Holding("rack");
        return set?.Value ?? boat.Records
            .LastOrDefault(r => r.As<BoatLaid>() is { Rack: not null } && (set is null || r.Entry.Time > set.Entry.Time))?
            .As<BoatLaid>()?.Rack;
    }

    /// <summary>Whether a rack's level was ever read: only then does it say anything of the boats on it.</summary>
    public static bool IsLevelKnown(Club club, string rack)
    {
        ArgumentNullException.ThrowIfNull(club);
        return club.About(new(Things.Rack, rack)).Any(r => r.Fact is RackLevelRead);
    }
}
