namespace Gatewright.Core.Rig;

/// <summary>What of a measure a target is of.</summary>
public enum RigAspect
{
    /// <summary>The measure at its place.</summary>
    Value,

    /// <summary>Sculling: the starboard side's less the port side's, at each seat.</summary>
    Sides,

    /// <summary>The largest less the smallest across the boat, of a sculling boat on each side by itself.</summary>
    Seats,
}
