namespace Gatewright.Drawings.Remedies;

/// <summary>What a pin's top is moved with.</summary>
public enum TiltMeans
{
    /// <summary>Nothing: the lean itself is shown.</summary>
    None,

    /// <summary>A shim under one edge of the pin's foot.</summary>
    ShimAtFoot,

    /// <summary>A washer behind a bolt of the rigger's plate.</summary>
    WasherAtPlate,

    /// <summary>The backstay's length.</summary>
    Backstay,

    /// <summary>The pin itself, straightened or another one.</summary>
    Pin,
}
