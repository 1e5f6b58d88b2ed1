namespace Gatewright.Core.Mending.Options;

/// <summary>Where a shim or washer goes, and which way the pin's top goes by it.</summary>
internal enum TiltWay
{
    /// <summary>A shim under the bow edge of the pin's foot.</summary>
    FootToStern,

    /// <summary>A shim under the stern edge of the pin's foot.</summary>
    FootToBow,

    /// <summary>A shim under the inner edge of the pin's foot.</summary>
    FootOut,

    /// <summary>A shim under the outer edge of the pin's foot.</summary>
    FootIn,

    /// <summary>A washer behind the upper bolt of the rigger's plate.</summary>
    PlateOut,

    /// <summary>A washer behind the lower bolt of the rigger's plate.</summary>
    PlateIn,
}

/// <summary>What each way is.</summary>
internal static class TiltWays
{
    public static IReadOnlyList<TiltWay> All { get; } = [.. Enum.GetValues<TiltWay>()];

    /// <summary>Whether it is done with washers at the plate, rather than with shims at the foot.</summary>
    public static bool IsAtThePlate(this TiltWay way) => way is TiltWay.PlateOut or TiltWay.PlateIn;

    /// <summary>Whether it tilts the pin along the boat, rather than across it.</summary>
    public static bool IsAlong(this TiltWay way) => way is TiltWay.FootToStern or TiltWay.FootToBow;

    /// <summary>+1 for a top that goes to the stern or away from the hull.</summary>
    public static int Sign(this TiltWay way) => way is TiltWay.FootToStern or TiltWay.FootOut or TiltWay.PlateOut ? 1 : -1;

    /// <summary>Where the pack goes.</summary>
    public static string Place(this TiltWay way) => way switch
    {
        TiltWay.FootToStern => "under the bow edge of the pin's foot",
        TiltWay.FootToBow => "under the stern edge of the pin's foot",
        TiltWay.FootOut => "under the inner edge of the pin's foot, towards the hull",
        TiltWay.FootIn => "under the outer edge of the pin's foot, away from the hull",
        TiltWay.PlateOut => "behind the upper bolt of the rigger's plate",
        _ => "behind the lower bolt of the rigger's plate",
    };

    /// <summary>Where the pin's top goes.</summary>
    public static string Goes(this TiltWay way) => way switch
    {
        TiltWay.FootToStern => "towards the stern",
        TiltWay.FootToBow => "towards the bow",
        TiltWay.FootOut or TiltWay.PlateOut => "away from the hull",
        _ => "towards the hull",
    };
}
