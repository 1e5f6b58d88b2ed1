namespace Gatewright.Core.Mending;

/// <summary>What is to be minded at the place where the work is; the sentence is made where it is told.</summary>
public enum Caution
{
    /// <summary>Whose word comes before this program's: the maker's, the club's and the federation's safety code.</summary>
    Defer,

    /// <summary>A boat is lifted or turned.</summary>
    Lifting,

    /// <summary>A boat is not to go out: it is marked so.</summary>
    Stopped,

    /// <summary>A pin is bent back, and bent twice it cracks.</summary>
    BentPin,

    /// <summary>A stay is set, and forced it cracks the hull.</summary>
    Stay,

    /// <summary>Bolts were loosened.</summary>
    Bolts,

    /// <summary>A rigger took a blow.</summary>
    Knocked,

    /// <summary>An insert has to sit home at both ends.</summary>
    InsertHome,

    /// <summary>A sleeve is warmed and glued.</summary>
    Glue,
}

/// <summary>The usual cautions.</summary>
public static class Cautions
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Caution> All { get; } = [.. Enum.GetValues<Caution>()];

    /// <summary>What goes with a remedy; the last is always whose word comes first.</summary>
    public static IReadOnlyList<Caution> For(RemedyKind kind) => kind switch
    {
        RemedyKind.InsertSwap => [Caution.InsertHome, Caution.Defer],
        RemedyKind.PinFootShim or RemedyKind.PlateWasher => [Caution.Bolts, Caution.Defer],
        RemedyKind.Backstay => [Caution.Stay, Caution.Bolts, Caution.Defer],
        RemedyKind.StraightenPin => [Caution.BentPin, Caution.Bolts, Caution.Defer],
        RemedyKind.ReplacePin => [Caution.Bolts, Caution.Defer],
        RemedyKind.SetRigger => [Caution.Knocked, Caution.Stay, Caution.Bolts, Caution.Defer],
        RemedyKind.RefitRigger or RemedyKind.RepairRigger => [Caution.Knocked, Caution.Bolts, Caution.Defer],
        RemedyKind.ExchangeRiggers => [Caution.Bolts, Caution.Defer],
        RemedyKind.TurnSleeve => [Caution.Glue, Caution.Defer],
        RemedyKind.LevelAgain => [Caution.Lifting, Caution.Defer],
        _ => [Caution.Defer],
    };
}
