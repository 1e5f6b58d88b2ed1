using Gatewright.Core.Mending;

namespace Gatewright.Journal.Exchange.StoresFiles;

/// <summary>Reads a row under the header: so many of one part.</summary>
internal sealed class StoresRow(RowFields fields, TableColumns columns, Reporter report, char separator)
{
    /// <summary>The line, or null when there is something wrong with it, which was reported.</summary>
    public PartCount? Read()
    {
        if (fields.CountUsed > columns.Count)
        {
            report.TooManyCells(fields[fields.CountUsed - 1], fields.CountUsed, columns.Count);
            return null;
        }

        PartKind? kind = Kind();
        double? size = kind is { } known ? Size(known) : null;
        int? count = Count();
        if (separator == ',' && IsNumber(fields[columns[StoresFormat.NoteColumn]]) && columns[StoresFormat.NoteColumn] == columns[StoresFormat.CountColumn] + 1)
        {
            report.MaybeSplit(fields[columns[StoresFormat.NoteColumn]]);
        }

        return kind is { } k && size is { } s && count is { } c ? new(new(k, s), c) : null;
    }

    private PartKind? Kind()
    {
        ReadOnlySpan<char> text = fields[columns[StoresFormat.PartColumn]];
        if (text.IsEmpty)
        {
            report.BlankCell("part", StoresFormat.Parts.Choice);
            return null;
        }

        // "Shims" is what people write over a box of them.
        ReadOnlySpan<char> one = text[^1] is 's' or 'S' ? text[..^1] : text;
        if ((StoresFormat.Parts.Find(text) ?? StoresFormat.Parts.Find(one)) is { } kind)
        {
            return kind;
        }

        report.NoPart(text);
        return null;
    }

    private double? Size(PartKind kind)
    {
        ReadOnlySpan<char> text = fields[columns[StoresFormat.SizeColumn]];
        if (kind == PartKind.Pin)
        {
            return PinSize(text);
        }

        if (text.IsEmpty)
        {
            report.BlankCell("size", StoresMessages.Expected(kind));
            return null;
        }

        bool isInsert = kind == PartKind.Insert;
        double? size = DegreesText.Find(isInsert ? text : WithoutUnit(text));
        double most = isInsert ? StoresFormat.MostDegrees : StoresFormat.MostMillimetres;
        if (size is { } number && number <= most && (isInsert ? number >= 0 : number > 0))
        {
            return number;
        }

        report.NoSize(text, size, kind);
        return null;
    }

    private double? PinSize(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty || DegreesText.Find(text) == 0)
        {
            return 0;
        }

        report.SizeOfPin(text);
        return null;
    }

    private int? Count()
    {
        ReadOnlySpan<char> text = fields[columns[StoresFormat.CountColumn]];
        if (text.IsEmpty)
        {
            report.BlankCell("count", StoresMessages.ExpectedCount);
            return null;
        }

        if (DegreesText.Find(text) is { } number && number >= 0 && number <= StoresFormat.MostOfAPart && number == Math.Floor(number))
        {
            return (int)number;
        }

        report.NoCount(text);
        return null;
    }

    private static ReadOnlySpan<char> WithoutUnit(ReadOnlySpan<char> text) =>
        text.EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? CellText.Trim(text[..^2]) : text;

    private static bool IsNumber(ReadOnlySpan<char> text) => !text.IsEmpty && !text.ContainsAnyExceptInRange('0', '9');
}
