namespace Gatewright.Core.Diagnosing;

/// <summary>What can be wrong, so that a gate reads wrong.</summary>
public enum Cause
{
    /// <summary>The pitch built into gate and insert: a wrong or worn insert.</summary>
    GatePitch,

    /// <summary>The pin leans fore or aft.</summary>
    PinAft,

    /// <summary>The pin leans out or in.</summary>
    PinOut,

    /// <summary>The rigger is knocked or mounted wrong: the pin leans both ways at once.</summary>
    Rigger,

    /// <summary>A rigger stands on another's place, or end for end.</summary>
    WrongSeat,

    /// <summary>The oar's sleeve has slipped on its shaft.</summary>
    Sleeve,

    /// <summary>The boat did not lie as its level says: nothing is wrong with the boat.</summary>
    HullLevel,

    /// <summary>The gauge does not show 0 on a plumb face: nothing is wrong with the boat.</summary>
    GaugeZero,
}

/// <summary>Causes and their codes.</summary>
public static class Causes
{
    /// <summary>The code for "nothing is wrong", where a cause is asked for.</summary>
    public const string NoneCode = "none";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Cause> All { get; } = [.. Enum.GetValues<Cause>()];

    /// <summary>The code used in files: "pin-out".</summary>
    public static string Code(this Cause cause) => cause switch
    {
        Cause.GatePitch => "gate-pitch",
        Cause.PinAft => "pin-aft",
        Cause.PinOut => "pin-out",
        Cause.Rigger => "rigger",
        Cause.WrongSeat => "wrong-seat",
        Cause.Sleeve => "sleeve",
        Cause.HullLevel => "hull-level",
        _ => "gauge-zero",
    };

    /// <summary>Whether the whole boat shares it, rather than one gate.</summary>
    public static bool IsBoatWide(this Cause cause) => cause is Cause.HullLevel or Cause.GaugeZero;
}
