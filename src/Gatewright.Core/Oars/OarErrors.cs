using Gatewright.Core.Rig;

namespace Gatewright.Core.Oars;

/// <summary>What an oar's figures are uncertain by, beside the gauge and the level. All are this project's judgement; none is published.</summary>
public sealed record OarErrors
{
    /// <summary>The defaults.</summary>
    public static OarErrors Default { get; } = new();

    /// <summary>The blade laid on the gunwale again, a little nearer the tip or not quite flat: 0.3° each time.</summary>
    public double PlacingU { get; init; } = 0.3;

    /// <summary>What blades of one shape have in common: where they are flat, and how they were set when made: 0.5°.</summary>
    public double ShapeU { get; init; } = 0.5;

    /// <summary>A scale: 0.02 kg.</summary>
    public double WeightU { get; init; } = 0.02;

    /// <summary>The errors of a tape on an oar: those of the rig's measures.</summary>
    internal static RigErrors Tape(OarItem item) =>
        RigErrors.Usual(item == OarItem.Length ? RigMeasure.OarLength : RigMeasure.Inboard);
}
