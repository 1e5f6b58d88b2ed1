using Gatewright.Core.Mending;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>What a step makes of something it does not set.</summary>
/// <param name="Of">What.</param>
/// <param name="Place">Where.</param>
/// <param name="Before">Before the step: centimetres, degrees, or of gearing the ratio.</param>
/// <param name="After">After it.</param>
public sealed record ChangeEffect(EffectOf Of, RigPlace Place, double Before, double After);

/// <summary>What follows from what is set.</summary>
public enum EffectOf
{
    /// <summary>The overlap of the handles, centimetres.</summary>
    Overlap,

    /// <summary>Sweep outboard by spread, scull outboard by half the span: a ratio.</summary>
    Gearing,

    /// <summary>The pitch at the catch, degrees.</summary>
    PitchCatch,

    /// <summary>The pitch abeam, degrees.</summary>
    PitchAbeam,

    /// <summary>The pitch at the finish, degrees.</summary>
    PitchFinish,
}

/// <summary>One thing to do on the way from one rig to another.</summary>
/// <param name="Phase">Where in the work it stands.</param>
/// <param name="Place">The seat or gate; of a rigger or an oar the one it goes to, or the one it leaves where it goes to none.</param>
public sealed record ChangeStep(ChangePhase Phase, RigPlace Place)
{
    /// <summary>What is set; null where a rigger or an oar changes its place.</summary>
    public RigItem? Item { get; init; }

    /// <summary>What it is before; null where that is not known.</summary>
    public RigEstimate? Before { get; init; }

    /// <summary>What is to be expected after, with how well it is usually hit.</summary>
    public RigEstimate? After { get; init; }

    /// <summary>The gate that a rigger or an oar leaves; null where it comes from elsewhere.</summary>
    public GatePlace? From { get; init; }

    /// <summary>The gate it goes to; null where it is laid by.</summary>
    public GatePlace? To { get; init; }

    /// <summary>The mark on it; null where none is known.</summary>
    public string? Mark { get; init; }

    /// <summary>Whether a rigger or an oar changes its place: then nothing is set.</summary>
    public bool IsMove => Item is null;

    /// <summary>What is done to pin or gate, with amount and direction; null for all else.</summary>
    public Work? Work { get; init; }

    /// <summary>What it takes from stores.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>What else comes out otherwise.</summary>
    public IReadOnlyList<ChangeEffect> Effects { get; init; } = [];

    /// <summary>What has to be read again at its place, or at both gates of its seat.</summary>
    public IReadOnlyList<RigItem> ReadAgain { get; init; } = [];

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];
}

/// <summary>Why nothing is done about an item that is not shown to be as it should.</summary>
public enum UnclearWhy
{
    /// <summary>Nobody has measured it, or not on the rigger or oar that is to be there.</summary>
    NotMeasured,

    /// <summary>It looks off, but its uncertainty may be all there is to it.</summary>
    CannotTell,

    /// <summary>No part that can be had brings it nearer.</summary>
    NoPart,
}

/// <summary>An item that is to be measured before anything is done about it.</summary>
/// <param name="Aim">What it is to be.</param>
/// <param name="Place">Where it is measured.</param>
/// <param name="Now">What is known of it; null where nothing is.</param>
/// <param name="Why">Why.</param>
public sealed record UnclearItem(RigAim Aim, RigPlace Place, RigEstimate? Now, UnclearWhy Why);
