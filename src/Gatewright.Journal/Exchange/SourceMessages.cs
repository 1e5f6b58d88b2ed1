namespace Gatewright.Journal.Exchange;

/// <summary>What there is to say about a source or its header.</summary>
internal static class SourceMessages
{
    private const string SaveAsCsv = "save the sheet as CSV in the encoding UTF-8 (often listed as \"CSV UTF-8\")";

    public static void Empty(this Reporter report) => report.SourceError(
        $"nothing in it: expected a header (boat, class, seat, side, item, at, reading, ...) and under it a row for each reading.");

    public static void OnlyHeader(this Reporter report) => report.SourceError(
        $"a header with nothing under it: expected a row for each reading.");

    public static void NoReadings(this Reporter report) => report.SourceError(
        $"levels of racks and no reading: give it together with a file of readings.");

    public static void NoHeader(this Reporter report, ReadOnlySpan<char> first) => report.Error(
        null,
        first,
        $"is not the name of a column, nor is anything else in this line: expected a header (boat, class, seat, side, item, at, reading, ...), its names separated by commas, semicolons or tabs.");

    public static void ColumnTwice(this Reporter report, Column column) => report.HeaderError(
        column.Name(), $"stands in the header more than once: keep one.");

    public static void MissingColumns(
        this Reporter report, IReadOnlyList<Column> missing, IReadOnlyList<(int Index, string Name)> foreign)
    {
        string names = string.Join(", ", missing.Select(c => c.Name()));
        report.Error(null, default, $"missing from the header: {names}. Add what is missing; the header names each column once, in any order.{Meant(missing, foreign)}");
    }

    public static void ForeignColumn(this Reporter report, string name) => report.WarnOnce(
        ShownText.Of(name), default, "is not a column of readings: what stands in it is kept as a note.");

    public static void Unreadable(this Reporter report, TextDefect defect)
    {
        report.MoveTo(defect.Line);
        switch (defect.Kind)
        {
            case TextDefectKind.SpreadsheetFile:
                report.SourceError($"a spreadsheet program's own file, not CSV: open it there and {SaveAsCsv}.");
                break;
            case TextDefectKind.NotText:
                report.Error(null, default, $"not text: a character stands here that no text file has. Open the file in the program that made it and {SaveAsCsv}. Nothing from this row on was read.");
                break;
            case TextDefectKind.WrongEncoding:
                report.Error(null, defect.Shown, $"holds a character that is not UTF-8, so its letters cannot be told: {SaveAsCsv}. Nothing from this row on was read.");
                break;
            case TextDefectKind.EndlessQuote:
                report.Error(null, default, $"a quote mark opens here and {RowGuard.LongestRow:N0} characters later none has closed it: close it, or double it where it belongs to the text. Nothing from this row on was read.");
                break;
            default:
                report.Error(null, default, $"more than {RowGuard.LongestRow:N0} characters in one row: expected a line end after each row. Nothing from this row on was read.");
                break;
        }
    }

    public static void QuoteNotClosed(this Reporter report, ReadOnlySpan<char> cell) => report.Error(
        null, cell, $"opens with a quote mark that is never closed: close it, or double it where it belongs to the text. Nothing from this row on was read.");

    public static void StrayQuote(this Reporter report, ReadOnlySpan<char> cell, bool spansLines)
    {
        string rest = spansLines ? " Nothing from this row on was read." : "";
        report.Error(null, cell, $"has a quote mark inside: put the whole cell in quote marks and double the one inside it, \"6\"\" washer\".{rest}");
    }

    private static string Meant(IReadOnlyList<Column> missing, IReadOnlyList<(int Index, string Name)> foreign)
    {
        string meant = "";
        foreach (Column column in missing)
        {
            if (NearestName.Of(column.Name(), foreign.Select(f => f.Name)) is string near)
            {
                meant += $" Is '{ShownText.Of(near)}' meant for {column.Name()}?";
            }
        }

        return meant;
    }
}
