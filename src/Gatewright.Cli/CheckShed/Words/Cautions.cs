using Gatewright.Core.Judging;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>What is said where work or rowing could hurt someone.</summary>
internal static class Cautions
{
    /// <summary>What is said beside a boat, if anything.</summary>
    public static string? For(BoatVerdict boat) =>
        boat.Verdict == Verdict.Stop ? Stop
        : IsToBeTreatedAsStop(boat) ? UnsureFloor
        : null;

    /// <summary>
    /// Whether a boat that is not `stop` is to be treated so until it is read again: `adjust` elsewhere in it stands
    /// above the `unsure` of a floor and must not hide it.
    /// </summary>
    public static bool IsToBeTreatedAsStop(BoatVerdict boat) => boat.StaysAshore && boat.Verdict != Verdict.Stop;

    /// <summary>Beside a boat that must not go out.</summary>
    private const string Stop =
        Core.Mending.Cautions.Stopped + " A part that gave so little pitch is taken off and inspected before it is used "
        + "again, by someone qualified if there is any doubt.";

    /// <summary>Beside a boat that is not shown to be above its floors.</summary>
    private const string UnsureFloor =
        "It is not shown that the blade cannot dive: treat it as stop until it has been read again, or better.";

    /// <summary>Where a boat is to be read again or mended.</summary>
    public const string Lifting = Core.Mending.Cautions.Lifting;

    /// <summary>Under every check.</summary>
    public const string Precedence =
        "A verdict speaks of the pitch of the gates that were read and of nothing else about a boat. "
        + Core.Mending.Cautions.Defer;
}
