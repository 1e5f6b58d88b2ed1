namespace Gatewright.Core.Diagnosing;

/// <summary>What people tell of a boat, in the trade's words.</summary>
public enum ReportKind
{
    /// <summary>The rigger or gate was knocked: a collision, a fall, a door.</summary>
    Knock,

    /// <summary>The rigger was taken off and put on again.</summary>
    Refitted,

    /// <summary>The blade dived and the rower caught a crab early in the drive.</summary>
    CrabEarly,

    /// <summary>The blade stuck and the rower caught a crab at the finish.</summary>
    CrabAtFinish,

    /// <summary>The blade washes out: it will not stay covered.</summary>
    WashesOut,

    /// <summary>The boat sits down to one side while it is rowed.</summary>
    DownToOneSide,
}

/// <summary>Reports and their codes.</summary>
public static class ReportKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ReportKind> All { get; } = [.. Enum.GetValues<ReportKind>()];

    /// <summary>The code used in files: "crab-early".</summary>
    public static string Code(this ReportKind kind) => kind switch
    {
        ReportKind.Knock => "knock",
        ReportKind.Refitted => "refitted",
        ReportKind.CrabEarly => "crab-early",
        ReportKind.CrabAtFinish => "crab-at-finish",
        ReportKind.WashesOut => "washes-out",
        _ => "down-to-one-side",
    };

    /// <summary>Whether it tells of how a blade went through the water, to which gate and oar's sleeve both add.</summary>
    public static bool IsOfTheBlade(this ReportKind kind) =>
        kind is ReportKind.CrabEarly or ReportKind.CrabAtFinish or ReportKind.WashesOut;

    /// <summary>Whether it may have changed the gate: readings from before it say how the gate was, not how it is.</summary>
    public static bool ChangesTheGate(this ReportKind kind) => kind is ReportKind.Knock or ReportKind.Refitted;
}
