namespace Gatewright.Journal.Exchange;

/// <summary>
/// Notices rows whose cells have slipped out of their columns: there are too many, or a decimal comma has made two
/// cells of one reading. Then nothing in the row is what it seems.
/// </summary>
internal sealed class SlippedRow(RowCells cells, Reporter report, char separator)
{
    /// <summary>One digit or two: what is behind the decimal comma of a reading.</summary>
    private const int MostDecimals = 2;

    /// <summary>What is before it: of an oar's length three digits.</summary>
    private const int MostWhole = 3;

    private readonly int _behind = cells.Map[Column.Reading] + 1;
    private readonly Column? _columnBehind = cells.Map.At(cells.Map[Column.Reading] + 1);

    /// <summary>Whether the row is one, and was reported.</summary>
    public bool IsMet()
    {
        ReadOnlySpan<char> beyond = cells.Beyond;
        if (!beyond.IsEmpty)
        {
            report.TooManyCells(beyond, cells.CountUsed, cells.Map.Count);
            return true;
        }

        return separator == ',' && IsDigits(cells[Column.Reading], MostWhole) && IsDigits(cells.At(_behind), MostDecimals) && IsSplit();
    }

    /// <summary>
    /// A column of numbers speaks for itself. In a column of words there is no other way to come by digits; in one of
    /// names or text there is, unless the row has a cell more than the header.
    /// </summary>
    private bool IsSplit()
    {
        switch (_columnBehind)
        {
            case Column.Seat or Column.At or Column.BowHigh or Column.PortLow:
                return false;
            case null or Column.Note or Column.Boat or Column.Gauge or Column.Rack when cells.Count <= cells.Map.Count:
                if (_columnBehind is null or Column.Note)
                {
                    report.MaybeSplitReading(cells[Column.Reading], cells.At(_behind));
                }

                return false;
            default:
                report.SplitReading(cells[Column.Reading], cells.At(_behind));
                return true;
        }
    }

    private static bool IsDigits(ReadOnlySpan<char> text, int most) =>
        text.Length > 0 && text.Length <= most && char.IsAsciiDigit(text[0]) && char.IsAsciiDigit(text[^1]);
}
