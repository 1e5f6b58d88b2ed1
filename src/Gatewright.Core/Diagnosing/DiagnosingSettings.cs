using Gatewright.Core.Measuring;

namespace Gatewright.Core.Diagnosing;

/// <summary>Everything the inference of causes rests on beside the readings.</summary>
public sealed record DiagnosingSettings
{
    /// <summary>The defaults.</summary>
    public static DiagnosingSettings Default { get; } = new();

    /// <summary>How readings are uncertain.</summary>
    public MeasuringSettings Measuring { get; init; } = MeasuringSettings.Default;

    /// <summary>How far gates scatter.</summary>
    public Spreads Spreads { get; init; } = Spreads.Default;

    /// <summary>What people's reports say of causes.</summary>
    public ReportLikelihoods Reports { get; init; } = ReportLikelihoods.Default;

    /// <summary>How often causes are met.</summary>
    public PriorChances Chances { get; init; } = PriorChances.Default;
}
