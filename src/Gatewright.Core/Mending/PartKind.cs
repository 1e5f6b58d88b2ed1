namespace Gatewright.Core.Mending;

/// <summary>What lies on the shelf.</summary>
public enum PartKind
{
    /// <summary>An insert; its size is the gate pitch it gives, in degrees.</summary>
    Insert,

    /// <summary>A shim for the pin's foot; its size is its thickness in millimetres.</summary>
    Shim,

    /// <summary>A washer for a rigger's plate; its size is its thickness in millimetres.</summary>
    Washer,

    /// <summary>A pin; its size is 0.</summary>
    Pin,
}
