using Gatewright.Core.Mending.Options;

namespace Gatewright.Core.Mending;

/// <summary>One thing to do at a boat, as amounts and directions; the sentence is made where it is told.</summary>
/// <remarks>
/// Lengths are millimetres, tilts degrees. What goes "to the stern" is positive there and negative to the bow, what goes
/// "out" positive away from the hull and negative towards it, as leans are.
/// </remarks>
public abstract record Work
{
    private Work()
    {
    }

    /// <summary>Another insert in the gate.</summary>
    /// <param name="Degrees">The pitch that it gives.</param>
    /// <param name="Change">How much more that is than what is in the gate now, negative for less; null where that is not told.</param>
    public sealed record FitInsert(double Degrees, double? Change = null) : Work;

    /// <summary>Shims under one edge of the pin's foot, or washers behind one bolt of the rigger's plate.</summary>
    /// <param name="Way">Where they go, and which way the pin's top goes by it.</param>
    /// <param name="Sizes">The shims or washers.</param>
    /// <param name="TiltDegrees">How far the pin tilts, 0 or more.</param>
    /// <param name="BaseMm">The base the tilt was reckoned over.</param>
    /// <param name="LeftDegrees">What that leaves of what was wanted, 0 where it is not worth telling.</param>
    public sealed record Pack(TiltWay Way, ShimPack Sizes, double TiltDegrees, double BaseMm, double LeftDegrees = 0) : Work;

    /// <summary>The backstay set longer or shorter.</summary>
    /// <param name="ToSternMm">How far the pin comes to the stern where the stay holds it.</param>
    /// <param name="AftDegrees">How far its top tilts to the stern.</param>
    /// <param name="HeightMm">How high above the pin's foot the stay was taken to hold it.</param>
    /// <param name="IsDoubtful">Whether it is not known that the stay can be set at all.</param>
    public sealed record SetStay(double ToSternMm, double AftDegrees, double HeightMm, bool IsDoubtful = false) : Work;

    /// <summary>A bent pin straightened, where its maker allows that.</summary>
    /// <param name="Tip">How its tip is to come back.</param>
    public sealed record StraightenPin(TipWay Tip) : Work;

    /// <summary>A new pin.</summary>
    public sealed record FitPin : Work;

    /// <summary>The rigger taken off, looked over and seated square.</summary>
    /// <param name="Tip">How the top of the pin is to come back.</param>
    public sealed record RefitRigger(TipWay Tip) : Work;

    /// <summary>A bent rigger set or replaced by somebody who can.</summary>
    public sealed record RepairRigger : Work;

    /// <summary>Riggers put back on their own places.</summary>
    /// <param name="Gate">The gate of one.</param>
    /// <param name="Other">That of the other; null for a rigger that stands end for end.</param>
    public sealed record ExchangeRiggers(GatePlace Gate, GatePlace? Other) : Work;

    /// <summary>A slipped sleeve turned back on its shaft.</summary>
    /// <param name="Oar">The gate whose oar it is.</param>
    /// <param name="ToBowDegrees">How far the top of the blade has to come to the bow; negative to the stern.</param>
    /// <param name="RoundMm">How far that is round the shaft, 0 or more.</param>
    /// <param name="DiameterMm">The shaft's diameter.</param>
    public sealed record TurnSleeve(GatePlace Oar, double ToBowDegrees, double RoundMm, double DiameterMm) : Work;

    /// <summary>The boat's level read, or the boat packed up level, and its gates read again.</summary>
    public sealed record ReadLevel : Work;

    /// <summary>The gauge turned end for end on one face.</summary>
    public sealed record ReverseGauge : Work;
}

/// <summary>How the tip of a pin is to come back; 0 one way where it stands right that way.</summary>
/// <param name="ToSternMm">To the stern; negative to the bow.</param>
/// <param name="OutMm">Away from the hull; negative towards it.</param>
public readonly record struct TipWay(double ToSternMm, double OutMm);
