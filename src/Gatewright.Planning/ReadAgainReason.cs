namespace Gatewright.Planning;

/// <summary>Why a boat is to be read again before a spanner is taken to it.</summary>
public enum ReadAgainReason
{
    /// <summary>It probably did not lie as its level says.</summary>
    Level,

    /// <summary>The gauge probably does not show 0 on a plumb face.</summary>
    Gauge,

    /// <summary>Riggers probably stand on each other's places: they are put back, and read again.</summary>
    Riggers,

    /// <summary>What is not good is only unsure, and probably nothing is wrong.</summary>
    Doubt,
}

/// <summary>Reasons and their codes.</summary>
public static class ReadAgainReasons
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ReadAgainReason> All { get; } = Enum.GetValues<ReadAgainReason>();

    /// <summary>The code used in files: "level", "gauge", "riggers" or "doubt".</summary>
    public static string Code(this ReadAgainReason reason) => reason switch
    {
        ReadAgainReason.Level => "level",
        ReadAgainReason.Gauge => "gauge",
        ReadAgainReason.Riggers => "riggers",
        _ => "doubt",
    };
}
