namespace Gatewright.Planning;

/// <summary>The aims of a plan by name, as its account has them.</summary>
public static class AimNames
{
    /// <summary>Boats without a gate below a floor or in doubt about one: as many as can be.</summary>
    public const string AboveFloors = "above-floors";

    /// <summary>Boats wholly inside their standard: as many as can be.</summary>
    public const string Inside = "inside";

    /// <summary>Today's jobs that the plan after buying keeps: as many as can be.</summary>
    public const string Kept = "kept";

    /// <summary>Parts bought: as few as can be.</summary>
    public const string Bought = "bought";

    /// <summary>Distances from what gates are meant to be, in steps of the gauge, squared and summed: as little as can be.</summary>
    public const string Deviation = "deviation";

    /// <summary>Parts used: as few as can be.</summary>
    public const string Parts = "parts";

    /// <summary>Time for the jobs: as little as can be.</summary>
    public const string Minutes = "minutes";

    /// <summary>Jobs that make up for a cause instead of setting it right: as few as can be.</summary>
    public const string MadeUpFor = "made-up-for";
}
