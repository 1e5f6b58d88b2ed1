using Gatewright.Journal.Rounds;

namespace Gatewright.App.Round;

/// <summary>A reading that was just taken, or taken back.</summary>
/// <param name="Step">What was read.</param>
/// <param name="Value">What the gauge showed, degrees.</param>
/// <param name="Before">What it showed there last time, degrees; null for never.</param>
/// <param name="Entry">Its entry; null for one that was taken back.</param>
/// <param name="Slip">The slip that was taken back with it, or stands again without it, degrees; null for none.</param>
/// <param name="IsKept">Whether somebody has said that it is no slip.</param>
/// <param name="Expected">What work on the gate was to make of it since the last time, degrees; null where none was done.</param>
/// <param name="IsNoted">Whether a note that was typed and not kept yet was recorded with it.</param>
public sealed record TakenReading(
    ReadingStep Step, decimal Value, decimal? Before, Guid? Entry = null, decimal? Slip = null, bool IsKept = false, decimal? Expected = null, bool IsNoted = false)
{
    /// <summary>Whether it may be a slip, and nobody has said yet that it is none.</summary>
    public bool IsAsked => !IsKept && Journal.Rounds.Slip.May(Value, Before, Expected);
}
