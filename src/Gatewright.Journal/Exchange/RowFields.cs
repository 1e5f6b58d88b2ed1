using nietras.SeparatedValues;

namespace Gatewright.Journal.Exchange;

/// <summary>The cells of one row, trimmed and with their quote marks taken off; good until the next row is taken.</summary>
internal sealed class RowFields
{
    private readonly char[] _text = new char[RowGuard.LongestRow];
    private (int Start, int Length)[] _cells = new (int, int)[16];

    /// <summary>How many cells the row has, blank ones included.</summary>
    public int Count { get; private set; }

    /// <summary>How many cells there are up to the last that is not blank: 0 for a row with nothing in it.</summary>
    public int CountUsed { get; private set; }

    /// <summary>How many line ends there are inside the row, in quote marks.</summary>
    /// <remarks>The reader's own line numbers are not used: that of a first row is one too high when there is no header.</remarks>
    public int LineEnds { get; private set; }

    /// <summary>The cell's text; nothing where the row ends before it or the column is not there (-1).</summary>
    public ReadOnlySpan<char> this[int index] => (uint)index < (uint)Count
        ? _text.AsSpan(_cells[index].Start, _cells[index].Length)
        : default;

    /// <summary>Takes the cells of a row, up to the first whose quote marks make no sense.</summary>
    /// <returns>What is wrong with the quote marks of the cell that was taken last.</returns>
    public QuoteFault Take(SepReader.Row row)
    {
        (Count, CountUsed) = (0, 0);
        if (_cells.Length < row.ColCount)
        {
            _cells = new (int, int)[row.ColCount];
        }

        bool hasQuotes = row.Span.Contains('"');
        LineEnds = hasQuotes ? row.Span.Count('\n') : 0;
        int free = 0;
        QuoteFault fault = QuoteFault.None;
        for (int i = 0; i < row.ColCount && fault == QuoteFault.None; i++)
        {
            ReadOnlySpan<char> raw = CellText.Trim(row[i].Span);
            int length = raw.Length;
            if (hasQuotes && raw.Contains('"'))
            {
                fault = QuotedText.TakeOff(raw, _text.AsSpan(free), out length);
            }
            else
            {
                raw.CopyTo(_text.AsSpan(free));
            }

            Add(free, length);
            free += length;
        }

        // A row of other separators than the file's is a blank row too.
        CountUsed = HeaderLine.IsBlank(row.Span) ? 0 : CountUsed;
        return fault;
    }

    private void Add(int start, int length)
    {
        _cells[Count++] = (start, length);
        CountUsed = length == 0 ? CountUsed : Count;
    }
}
