using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Reporting;

/// <summary>What people tell of a boat: what is evidence for its gates, and damage, which is not.</summary>
public enum ReportSubject
{
    /// <summary>The rigger or gate was knocked.</summary>
    Knock,

    /// <summary>A crab early in the drive.</summary>
    CrabEarly,

    /// <summary>A crab at the finish.</summary>
    CrabAtFinish,

    /// <summary>The blade washes out.</summary>
    WashesOut,

    /// <summary>The boat sits down to one side.</summary>
    DownToOneSide,

    /// <summary>The rigger was off and on again.</summary>
    Refitted,

    /// <summary>Something is broken, cracked or loose.</summary>
    Damage,
}

/// <summary>Subjects and what they are to the diagnosis.</summary>
public static class ReportSubjects
{
    /// <summary>All of them, as they are offered.</summary>
    public static IReadOnlyList<ReportSubject> All { get; } = [.. Enum.GetValues<ReportSubject>()];

    /// <summary>The kind of report it is; null for damage.</summary>
    public static ReportKind? Kind(this ReportSubject subject) => subject switch
    {
        ReportSubject.Knock => ReportKind.Knock,
        ReportSubject.CrabEarly => ReportKind.CrabEarly,
        ReportSubject.CrabAtFinish => ReportKind.CrabAtFinish,
        ReportSubject.WashesOut => ReportKind.WashesOut,
        ReportSubject.DownToOneSide => ReportKind.DownToOneSide,
        ReportSubject.Refitted => ReportKind.Refitted,
        _ => null,
    };
}
