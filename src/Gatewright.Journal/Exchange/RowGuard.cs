using System.Buffers;

namespace Gatewright.Journal.Exchange;

/// <summary>
/// Looks over the text before it is split into cells: counts lines and quote marks, and stops at what is not text and
/// at a row without end, so that no buffer has to grow for it.
/// </summary>
internal sealed class RowGuard
{
    /// <summary>The most characters a row may have: some four hundred times one of ours.</summary>
    public const int LongestRow = 65_536;

    private const char Undecodable = '\uFFFD';

    private const int ShownBefore = 20;

    /// <summary>The control characters that no text file has.</summary>
    private const string Controls = "\0\u0001\u0002\u0003\u0004\u0005\u0006\u0007\u0008\u000E\u000F\u0010\u0011\u0012\u0013"
        + "\u0014\u0015\u0016\u0017\u0018\u0019\u001A\u001B\u001C\u001D\u001E\u001F";

    private static readonly SearchValues<char> s_controls = SearchValues.Create(Controls);

    private static readonly SearchValues<char> s_marks = SearchValues.Create("\"\n" + Controls);

    private int _line = 1;
    private int _rowLine = 1;
    private int _rowLength;
    private int _quoteLine;
    private bool _inQuotes;

    /// <summary>What stopped it, or null.</summary>
    public TextDefect? Defect { get; private set; }

    /// <summary>Stops before anything was read.</summary>
    public void Refuse(TextDefectKind kind) => Defect = new(kind, 1, 1);

    /// <summary>Looks over the next piece of the text.</summary>
    public void Pass(ReadOnlySpan<char> piece)
    {
        int bad = piece.IndexOf(Undecodable);
        ReadOnlySpan<char> good = bad < 0 ? piece : piece[..bad];
        int rowStart = PassMarks(good);
        if (Defect is null && bad >= 0)
        {
            Defect = piece[bad..].ContainsAny(s_controls)
                ? new(TextDefectKind.NotText, _line, _rowLine)
                : new(TextDefectKind.WrongEncoding, _line, _rowLine, ShownText.Of(piece[Math.Max(rowStart, bad - ShownBefore)..(bad + 1)]));
        }
    }

    /// <returns>Where in the piece the last row begins, 0 when it began before.</returns>
    private int PassMarks(ReadOnlySpan<char> text)
    {
        int rowStart = 0;
        int at = 0;
        while (Defect is null)
        {
            int next = text[at..].IndexOfAny(s_marks);
            Lengthen(next < 0 ? text.Length - at : next + 1);
            if (next < 0)
            {
                break;
            }

            at += next + 1;
            if (PassMark(text[at - 1]))
            {
                rowStart = at;
            }
        }

        return rowStart;
    }

    /// <returns>Whether a row ended with it.</returns>
    private bool PassMark(char mark)
    {
        switch (mark)
        {
            case '"':
                _inQuotes = !_inQuotes;
                _quoteLine = _line;
                return false;
            case '\n':
                _line++;
                return EndRow();
            default:
                Defect ??= new(TextDefectKind.NotText, _line, _rowLine);
                return false;
        }
    }

    private bool EndRow()
    {
        if (_inQuotes)
        {
            return false;
        }

        _rowLine = _line;
        _rowLength = 0;
        return true;
    }

    private void Lengthen(int by)
    {
        _rowLength += by;
        if (_rowLength > LongestRow)
        {
            Defect = _inQuotes
                ? new(TextDefectKind.EndlessQuote, _quoteLine, _rowLine)
                : new(TextDefectKind.EndlessRow, _rowLine, _rowLine);
        }
    }
}
