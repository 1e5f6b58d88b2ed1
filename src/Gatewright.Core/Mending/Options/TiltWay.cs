namespace Gatewright.Core.Mending.Options;

/// <summary>Where a shim or washer goes, and which way the pin's top goes by it.</summary>
public enum TiltWay
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
public static class TiltWays
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<TiltWay> All { get; } = [.. Enum.GetValues<TiltWay>()];

    /// <summary>Whether it is done with washers at the plate, rather than with shims at the foot.</summary>
    public static bool IsAtThePlate(this TiltWay way) => way is TiltWay.PlateOut or TiltWay.PlateIn;

    /// <summary>Whether it tilts the pin along the boat, rather than across it.</summary>
    public static bool IsAlong(this TiltWay way) => way is TiltWay.FootToStern or TiltWay.FootToBow;

    /// <summary>+1 for a top that goes to the stern or away from the hull.</summary>
    public static int Sign(this TiltWay way) => way is TiltWay.FootToStern or TiltWay.FootOut or TiltWay.PlateOut ? 1 : -1;

    /// <summary>The way of shims under the foot that tilts the pin to one side along the boat.</summary>
    public static TiltWay FootAlong(double aftDegrees) => aftDegrees > 0 ? TiltWay.FootToStern : TiltWay.FootToBow;

    /// <summary>The same, across the boat.</summary>
    public static TiltWay FootAcross(double outDegrees) => outDegrees > 0 ? TiltWay.FootOut : TiltWay.FootIn;

    /// <summary>The way of washers behind the plate that tilts the pin to one side across the boat.</summary>
    public static TiltWay Plate(double outDegrees) => outDegrees > 0 ? TiltWay.PlateOut : TiltWay.PlateIn;
}
