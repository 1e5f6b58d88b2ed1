namespace Gatewright.Core.Mending;

/// <summary>What can be done about a cause.</summary>
public enum RemedyKind
{
    /// <summary>Another insert in the gate.</summary>
    InsertSwap,

    /// <summary>A shim under one edge of the pin's foot.</summary>
    PinFootShim,

    /// <summary>A washer behind one bolt of the rigger's plate.</summary>
    PlateWasher,

    /// <summary>The backstay made longer or shorter.</summary>
    Backstay,

    /// <summary>The rigger set both ways: a washer behind its plate and the backstay's length.</summary>
    SetRigger,

    /// <summary>A bent pin straightened, where its maker allows that.</summary>
    StraightenPin,

    /// <summary>A new pin.</summary>
    ReplacePin,

    /// <summary>The rigger taken off, its seat cleaned, and put on again square.</summary>
    RefitRigger,

    /// <summary>The rigger repaired by somebody who can.</summary>
    RepairRigger,

    /// <summary>Riggers put back on their own places.</summary>
    ExchangeRiggers,

    /// <summary>The sleeve turned on its shaft.</summary>
    TurnSleeve,

    /// <summary>The boat levelled and read again: nothing is mended yet.</summary>
    LevelAgain,

    /// <summary>The gauge checked by reversal: nothing is mended yet.</summary>
    CheckGauge,
}

/// <summary>Remedies and their codes.</summary>
public static class RemedyKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<RemedyKind> All { get; } = [.. Enum.GetValues<RemedyKind>()];

    /// <summary>The code used in files: "insert-swap".</summary>
    public static string Code(this RemedyKind kind) => kind switch
    {
        RemedyKind.InsertSwap => "insert-swap",
        RemedyKind.PinFootShim => "pin-foot-shim",
        RemedyKind.PlateWasher => "plate-washer",
        RemedyKind.Backstay => "backstay",
        RemedyKind.SetRigger => "set-rigger",
        RemedyKind.StraightenPin => "straighten-pin",
        RemedyKind.ReplacePin => "replace-pin",
        RemedyKind.RefitRigger => "refit-rigger",
        RemedyKind.RepairRigger => "repair-rigger",
        RemedyKind.ExchangeRiggers => "exchange-riggers",
        RemedyKind.TurnSleeve => "turn-sleeve",
        RemedyKind.LevelAgain => "level-again",
        _ => "check-gauge",
    };
}
