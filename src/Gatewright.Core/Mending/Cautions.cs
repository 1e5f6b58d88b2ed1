namespace Gatewright.Core.Mending;

/// <summary>The usual cautions, at the place where the work is.</summary>
public static class Cautions
{
    /// <summary>Whose word comes before this program's.</summary>
    public const string Defer =
        "The boat maker's instructions and your club's and federation's safety code come first; ask a qualified person where you are not sure.";

    /// <summary>For anything that lifts or turns a boat.</summary>
    public const string Lifting =
        "Lift and turn the boat with enough people, one giving the orders, never by riggers, stays or footplate; let it lie firmly before a hand goes near it.";

    /// <summary>For a boat that is not to go out.</summary>
    public const string Stopped =
        "Mark the boat on its rack and in the book: not out on the water until it is mended and read again.";

    /// <summary>For a pin that is bent back.</summary>
    public const string BentPin =
        "A pin bent twice cracks: straighten it only if its maker allows it, never a second time, and look for cracks; when in doubt replace it.";

    /// <summary>For a stay that is set.</summary>
    public const string Stay =
        "Slacken the stay before you set it and never pull the rigger to it: forced, it can crack the hull where it is bolted.";

    /// <summary>For bolts that were loosened.</summary>
    public const string Bolts =
        "Tighten every bolt as the maker says, then turn the gate by hand: it must swing free. Check height and spread, which may have moved.";

    /// <summary>For a rigger that took a blow.</summary>
    public const string Knocked =
        "A rigger that took a blow may be cracked at its welds, stays or bolts, and the hull at its shoulder: look before you load it.";

    /// <summary>What goes with a remedy.</summary>
    public static IReadOnlyList<string> For(RemedyKind kind) => kind switch
    {
        RemedyKind.InsertSwap => ["Press the insert fully home at both ends of the gate and close the gate's keeper.", Defer],
        RemedyKind.PinFootShim or RemedyKind.PlateWasher => [Bolts, Defer],
        RemedyKind.Backstay => [Stay, Bolts, Defer],
        RemedyKind.StraightenPin => [BentPin, Bolts, Defer],
        RemedyKind.ReplacePin => [Bolts, Defer],
        RemedyKind.SetRigger => [Knocked, Stay, Bolts, Defer],
        RemedyKind.RefitRigger or RemedyKind.RepairRigger => [Knocked, Bolts, Defer],
        RemedyKind.ExchangeRiggers => [Bolts, Defer],
        RemedyKind.TurnSleeve => ["Heat and glue only as the oar maker says; check inboard afterwards.", Defer],
        RemedyKind.LevelAgain => [Lifting, Defer],
        _ => [Defer],
    };
}
