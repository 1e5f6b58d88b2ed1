using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;

namespace Gatewright.Core.Changing;

/// <summary>What a change is planned by.</summary>
public sealed record ChangeSettings
{
    /// <summary>The defaults: riggers stay on their seats, and the shelf is not known.</summary>
    public static ChangeSettings Default { get; } = new();

    /// <summary>When a figure outside its limits is taken as outside.</summary>
    public DecisionRule Rule { get; init; } = DecisionRule.Default;

    /// <summary>Parts and how well they hit.</summary>
    public MendingSettings Mending { get; init; } = MendingSettings.Default;

    /// <summary>Where catch and finish are.</summary>
    public MeasuringSettings Measuring { get; init; } = MeasuringSettings.Default;

    /// <summary>The shelf; null where nobody has counted it: then nothing is short.</summary>
    public Stores? Stores { get; init; }

    /// <summary>
    /// Whether riggers that the target does not name may go to other seats. Most are made for one seat of one hull: only where they
    /// are alike, and their maker has nothing against it.
    /// </summary>
    public bool MayExchangeRiggers { get; init; }

    /// <summary>How well height and spread come back when a rigger is put on again, in centimetres: 0.3. Ours, from judgement.</summary>
    public double RefitCentimetres { get; init; } = 0.3;
}
