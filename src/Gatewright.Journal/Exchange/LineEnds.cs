namespace Gatewright.Journal.Exchange;

/// <summary>Makes every line end, CR LF or CR, a line feed, in text that comes in pieces.</summary>
/// <remarks>
/// The row reader knows all three, but loses a blank row, and so count of the lines, where a CR is the last character
/// of its buffer and another follows.
/// </remarks>
internal sealed class LineEnds
{
    private bool _afterCarriageReturn;

    /// <summary>Changes a piece of text in place.</summary>
    /// <returns>How long it is now.</returns>
    public int Unify(Span<char> text)
    {
        if (text.IsEmpty)
        {
            return 0;
        }

        int read = _afterCarriageReturn && text[0] == '\n' ? 1 : 0;
        int written = 0;
        _afterCarriageReturn = text[^1] == '\r';
        while (true)
        {
            Span<char> rest = text[read..];
            int next = rest.IndexOf('\r');
            Span<char> line = next < 0 ? rest : rest[..next];
            line.CopyTo(text[written..]);
            written += line.Length;
            if (next < 0)
            {
                return written;
            }

            read += next + (rest[next..].StartsWith("\r\n") ? 2 : 1);
            text[written++] = '\n';
        }
    }
}
