using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>What a row says was checked.</summary>
internal enum CheckedKind
{
    Gate,
    Oar,
    Level,
    Gauge,
}

/// <summary>What a cause is found in.</summary>
internal static class CheckedKinds
{
    public static CheckedKind In(Cause cause) => cause switch
    {
        Cause.Sleeve => CheckedKind.Oar,
        Cause.HullLevel => CheckedKind.Level,
        Cause.GaugeZero => CheckedKind.Gauge,
        _ => CheckedKind.Gate,
    };
}
