using Gatewright.Core.Judging;

namespace Gatewright.Printing.RigSheets;

/// <summary>A measure of the rig, seat by seat.</summary>
/// <param name="Measure">The measure alone: "Height".</param>
/// <param name="Unit">"cm" or "°".</param>
/// <param name="Name">What it is called, with its unit; of a sculling boat's gates the side too.</param>
/// <param name="Target">From where to where it may lie; null for no target.</param>
/// <param name="IsFirst">Whether it is among those that every boat is set up by first; the others wait for room.</param>
/// <param name="Seats">What it is, from the bow; null where it was not measured.</param>
internal sealed record SheetMeasure(string Measure, string Unit, string Name, string? Target, bool IsFirst, IReadOnlyList<SheetValue?> Seats)
{
    /// <summary>Whether anything of it was taken, or follows from what was.</summary>
    public bool IsMeasured => Seats.Any(s => s is not null);

    /// <summary>The largest uncertainty of its values; null while there is none.</summary>
    public string? WidestU => Seats.OfType<SheetValue>().MaxBy(s => s.Width)?.U;
}

/// <summary>A value of the rig as it stands on paper.</summary>
/// <param name="Value">The value.</param>
/// <param name="U">Its standard uncertainty.</param>
/// <param name="Width">The same as a number.</param>
/// <param name="Verdict">How it was judged; null without a target.</param>
/// <param name="IsExpected">Whether nobody took it, and it follows from other measures: it stands in brackets.</param>
internal sealed record SheetValue(string Value, string U, double Width, Verdict? Verdict, bool IsExpected);
