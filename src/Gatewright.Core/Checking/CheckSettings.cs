using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;

namespace Gatewright.Core.Checking;

/// <summary>What a check is made by.</summary>
public sealed record CheckSettings
{
    /// <summary>The club standard and all defaults.</summary>
    public static CheckSettings Default { get; } = new();

    /// <summary>The limits.</summary>
    public Standard Standard { get; init; } = Standard.Club;

    /// <summary>How sure one must be.</summary>
    public DecisionRule Rule { get; init; } = DecisionRule.Default;

    /// <summary>How readings are uncertain and what may be wrong.</summary>
    public DiagnosingSettings Diagnosing { get; init; } = DiagnosingSettings.Default;

    /// <summary>Of how many days' readings of a gate are combined, the last ones: 4.</summary>
    public int DaysCombined { get; init; } = 4;
}
