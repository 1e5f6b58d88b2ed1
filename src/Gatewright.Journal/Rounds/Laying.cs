using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>How a boat lies to be read, and how its level is known.</summary>
/// <param name="Lie">Upright or inverted.</param>
/// <param name="Level">How its level is known.</param>
/// <param name="BowHigh">Degrees the bow lies high, where it was read.</param>
/// <param name="PortLow">Degrees port lies low, where it was read.</param>
/// <param name="Rack">The rack, where its level is the rack's.</param>
public sealed record Laying(Lie Lie, LevelBasis Level, decimal? BowHigh = null, decimal? PortLow = null, string? Rack = null)
{
    /// <summary>
    /// How a boat is taken to lie until somebody says otherwise: as in this round, else as last time. A level that was read
    /// on another day is not known today: then it is the rack's, if that was ever read, or the eye's.
    /// </summary>
    public static Laying Usual(Club club, BoatInRound boat)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(boat);
        if (boat.Laid is { } laid)
        {
            return Of(laid);
        }

        var berth = BoatBerth.Of(boat.Boat);
        string? rack = berth.Rack is { } key && BoatBerth.IsLevelKnown(club, key) ? key : null;
        return berth.Level switch
        {
            LevelBasis.BubbleCentred or LevelBasis.ByEye => new(berth.Lie, berth.Level.Value),
            _ when rack is not null => new(berth.Lie, LevelBasis.Rack, Rack: rack),
            _ => new(berth.Lie, LevelBasis.ByEye),
        };
    }

    /// <summary>How a boat was laid.</summary>
    public static Laying Of(BoatLaid laid)
    {
        ArgumentNullException.ThrowIfNull(laid);
        return new(laid.Lie, laid.Level, laid.BowHigh, laid.PortLow, laid.Level == LevelBasis.Rack ? laid.Rack : null);
    }

    /// <summary>Whether a boat that was laid so lies so.</summary>
    public bool Is(BoatLaid laid) => Of(laid) == this;

    /// <summary>The same as it is recorded.</summary>
    public BoatLaid Fact(string lying, string boat, string? round) => new(lying, boat, Lie, Level, BowHigh, PortLow, Rack, round);

    /// <summary>What is recorded when somebody says that a boat lies so; null where the journal says so already.</summary>
    /// <param name="boat">The boat.</param>
    /// <param name="lying">The lying that is gone on with; null for none.</param>
    /// <param name="isMoved">
    /// Whether the boat was moved since it was read in that lying. Then it is another, with a level of its own, though it lies alike; else
    /// what was said of that lying is put right, for all that was read in it.
    /// </param>
    /// <param name="newLying">A key for a lying that is new.</param>
    /// <param name="round">The round, if it is part of one.</param>
    internal BoatLaid? Said(BoatView boat, string? lying, bool isMoved, string newLying, string? round)
    {
        if (isMoved || boat.Others.LastOrDefault(r => r.As<BoatLaid>()?.Lying == lying) is not { Fact: BoatLaid laid } said)
        {
            return Fact(newLying, boat.Key, round) with { Moved = isMoved ? true : null };
        }

        // Put right on a later day it is still of the day on which the boat lay so.
        return Is(laid) ? null : laid with { Lie = Lie, Level = Level, BowHigh = BowHigh, PortLow = PortLow, Rack = Rack, Date = Day.Of(said) };
    }
}
