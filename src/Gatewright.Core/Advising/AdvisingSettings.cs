using Gatewright.Core.Geometry;

namespace Gatewright.Core.Advising;

/// <summary>When a further reading is worth taking. Ours, from judgement.</summary>
public sealed record AdvisingSettings
{
    /// <summary>The defaults.</summary>
    public static AdvisingSettings Default { get; } = new();

    /// <summary>How long readings take.</summary>
    public ReadingTimes Times { get; init; } = ReadingTimes.Default;

    /// <summary>A cause this probable is taken as found: 0.9.</summary>
    public double CauseFound { get; init; } = 0.9;

    /// <summary>A lean whose standard uncertainty is no greater than this is known: 0.5°, a gauge's step.</summary>
    public Angle LeanKnown { get; init; } = Angle.FromDegrees(0.5);

    /// <summary>A verdict this probable is taken as settled: 0.95, as a floor is guarded.</summary>
    public double VerdictSettled { get; init; } = 0.95;

    /// <summary>A reading expected to tell less than this is not worth taking: 0.1 bit.</summary>
    public double LeastGainBits { get; init; } = 0.1;

    /// <summary>Only this many of the most doubtful gates are considered for a reading: 4.</summary>
    public int MostGates { get; init; } = 4;
}
