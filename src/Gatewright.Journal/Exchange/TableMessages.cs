namespace Gatewright.Journal.Exchange;

/// <summary>What there is to say about the header of a table.</summary>
internal static class TableMessages
{
    public static void NoTable(this Reporter report, TableFormat format) => report.SourceError(
        $"nothing in it: expected a header ({format.Names}) and under it a row for {format.Row}.");

    public static void NoHeader(this Reporter report, ReadOnlySpan<char> first, TableFormat format) => report.CellError(
        null,
        first,
        $"is not the name of a column, nor is anything else in this line: expected a header ({format.Names}), its names separated by commas, semicolons or tabs.");

    public static void ColumnTwice(this Reporter report, string column) => report.HeaderError(
        column, $"stands in the header more than once: keep one.");

    public static void MissingColumns(this Reporter report, IReadOnlyList<string> missing, IReadOnlyList<string> foreign)
    {
        string meant = string.Concat(missing
            .Select(column => (Column: column, Near: NearestName.Of(column, foreign)))
            .Where(m => m.Near is not null)
            .Select(m => $" Is '{ShownText.Of(m.Near)}' meant for {m.Column}?"));
        report.CellError(null, default, $"missing from the header: {string.Join(", ", missing)}. Add what is missing; the header names each column once, in any order.{meant}");
    }

    public static void ForeignColumn(this Reporter report, string name, TableFormat format) => report.WarnOnce(
        ShownText.Of(name), default, $"is not a column of {format.Things}: what stands in it is not used.");

    public static void BlankCell(this Reporter report, string column, string expected) => report.CellError(
        column, default, $"blank: expected {expected}.");
}
