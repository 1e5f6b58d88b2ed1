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

/// <summary>Parts and their words.</summary>
public static class PartKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<PartKind> All { get; } = [.. Enum.GetValues<PartKind>()];

    /// <summary>"insert", "shim", "washer" or "pin", in files as on the shelf.</summary>
    public static string Word(this PartKind kind) => kind switch
    {
        PartKind.Insert => "insert",
        PartKind.Shim => "shim",
        PartKind.Washer => "washer",
        _ => "pin",
    };
}
