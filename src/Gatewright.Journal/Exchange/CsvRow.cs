using System.Buffers;

namespace Gatewright.Journal.Exchange;

/// <summary>Writes cells and rows, quoted as RFC 4180, section 2, has it; the line ends are bare line feeds.</summary>
internal sealed class CsvRow(TextWriter to)
{
    /// <summary>Every separator that a reader may take for one, whichever is used here.</summary>
    private static readonly SearchValues<char> s_quoted = SearchValues.Create(",;\t\"\r\n");

    private bool _isBegun;

    /// <summary>Writes the next cell of the row.</summary>
    public void Cell(ReadOnlySpan<char> text)
    {
        if (_isBegun)
        {
            to.Write(',');
        }

        _isBegun = true;
        if (!text.ContainsAny(s_quoted))
        {
            to.Write(text);
            return;
        }

        to.Write('"');
        foreach (char c in text)
        {
            to.Write(c);
            if (c == '"')
            {
                to.Write(c);
            }
        }

        to.Write('"');
    }

    public void End()
    {
        to.Write('\n');
        _isBegun = false;
    }
}
