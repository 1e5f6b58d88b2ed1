namespace Gatewright.Core.Diagnosing;

/// <summary>How likely each report is, by what is wrong. Defaults from this project's judgement; none is published.</summary>
/// <remarks>
/// A knock or a refit points to what it can have moved, whichever way. A crab, a blade that washes out and a boat
/// that sits down point to the pitch itself: their chance rises from the base to the peak as the pitch passes a
/// threshold, along a normal curve of the given width, so that the average over a story's normal state is exact.
/// </remarks>
public sealed record ReportLikelihoods
{
    /// <summary>The defaults.</summary>
    public static ReportLikelihoods Default { get; } = new();

    /// <summary>A knock told of a gate with nothing wrong: 0.02.</summary>
    public double KnockBase { get; init; } = 0.02;

    /// <summary>A knock told of a gate whose rigger is out: 0.5.</summary>
    public double KnockIfRigger { get; init; } = 0.5;

    /// <summary>A knock told of a gate whose pin leans: 0.25.</summary>
    public double KnockIfPin { get; init; } = 0.25;

    /// <summary>A refit told of a gate with nothing wrong: 0.1.</summary>
    public double RefittedBase { get; init; } = 0.1;

    /// <summary>
    /// A refit told of a gate whose rigger is out: 0.6. Not so of one on another's place: its own chance is already that
    /// of a rigger which was refitted, and would otherwise count the refit twice.
    /// </summary>
    public double RefittedIfRigger { get; init; } = 0.6;

    /// <summary>A refit told of a gate whose pin leans one way: 0.2.</summary>
    public double RefittedIfPin { get; init; } = 0.2;

    /// <summary>A crab early in the drive, by the pitch at the catch: rises below 2° (width 1°), 0.03 to 0.5.</summary>
    public ReportCurve CrabEarly { get; init; } = new(2, 1, 0.03, 0.5);

    /// <summary>A crab at the finish, by the pitch there: rises below 0.5° (width 1°), 0.03 to 0.5.</summary>
    public ReportCurve CrabAtFinish { get; init; } = new(0.5, 1, 0.03, 0.5);

    /// <summary>A blade that washes out, by the pitch abeam: rises above 6.5° (width 1°), 0.03 to 0.5.</summary>
    public ReportCurve WashesOut { get; init; } = new(6.5, 1, 0.03, 0.5);

    /// <summary>
    /// A boat down to one side, by how much less the mean pitch abeam is on that side: rises above 1° (width 0.5°),
    /// 0.1 to 0.5. The base is high, since heights and rowers do it too.
    /// </summary>
    public ReportCurve DownToOneSide { get; init; } = new(1, 0.5, 0.1, 0.5);

    /// <summary>How likely a knock or refit is to be told of a gate that has a cause; the base when the cause says nothing of it.</summary>
    internal double Given(ReportKind kind, Cause cause) => (kind, cause) switch
    {
        (ReportKind.Knock, Cause.Rigger) => KnockIfRigger,
        (ReportKind.Knock, Cause.PinAft or Cause.PinOut) => KnockIfPin,
        (ReportKind.Refitted, Cause.Rigger) => RefittedIfRigger,
        (ReportKind.Refitted, Cause.PinAft or Cause.PinOut) => RefittedIfPin,
        _ => Base(kind),
    };

    /// <summary>How likely a knock or refit is to be told of a gate with nothing wrong.</summary>
    internal double Base(ReportKind kind) => kind == ReportKind.Knock ? KnockBase : RefittedBase;
}
