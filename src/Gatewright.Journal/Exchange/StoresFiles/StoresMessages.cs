using System.Globalization;
using Gatewright.Core.Mending;

namespace Gatewright.Journal.Exchange.StoresFiles;

/// <summary>What there is to say about a file of stores.</summary>
internal static class StoresMessages
{
    public static string ExpectedCount { get; } = string.Create(
        CultureInfo.InvariantCulture,
        $"how many there are, a whole number from 0 to {StoresFormat.MostOfAPart:N0}; 0 says that the size can be bought");

    /// <summary>What was expected of a size.</summary>
    public static string Expected(PartKind kind) => kind == PartKind.Insert
        ? $"the degrees that the insert gives, from 0 to {StoresFormat.MostDegrees}, such as 4"
        : $"the thickness in millimetres, above 0 and at most {StoresFormat.MostMillimetres}, such as 0.5";

    public static void NoPart(this Reporter report, ReadOnlySpan<char> value) => report.CellError(
        "part", value, $"is not a part: expected {StoresFormat.Parts.Choice}.");

    public static void NoSize(this Reporter report, ReadOnlySpan<char> value, double? size, PartKind kind)
    {
        if (size is not null)
        {
            report.CellError("size", value, $"is not a possible size: expected {Expected(kind)}.");
        }
        else if (SpreadsheetDate.IsMeantBy(value))
        {
            report.CellError("size", value, $"is a date that a spreadsheet made of a number: set the column to Text (or type the decimal sign the sheet expects) and type the number again, such as 0.5.");
        }
        else
        {
            report.CellError("size", value, $"is not a number: expected {Expected(kind)}.");
        }
    }

    public static void SizeOfPin(this Reporter report, ReadOnlySpan<char> value) => report.CellError(
        "size", value, $"does not go with a pin, which has no size here: leave it blank.");

    public static void NoCount(this Reporter report, ReadOnlySpan<char> value) => report.CellError(
        "count", value, $"is not a count: expected {ExpectedCount}.");

    public static void TooMany(this Reporter report, Part part, int count) => report.CellError(
        "count", default, $"{count:N0} of {part} in all lines together: expected at most {StoresFormat.MostOfAPart:N0}.");

    public static void CountedTogether(this Reporter report, Part part, RowPlace first) => report.WarnOnce(
        "part", part.ToString(), $"stands in {first.SeenFrom(report.Place)} too: they are counted together.");

    public static void MaybeSplit(this Reporter report, ReadOnlySpan<char> note) => report.WarnOnce(
        "note", note, "is a number: if the size was written with a decimal comma, its cells have slipped; write it with a point, or save the sheet with semicolons.");
}
