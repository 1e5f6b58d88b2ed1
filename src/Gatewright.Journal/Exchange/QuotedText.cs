namespace Gatewright.Journal.Exchange;

/// <summary>What is wrong with the quote marks of a cell.</summary>
internal enum QuoteFault
{
    None,

    /// <summary>It opens with one and the file ends before another.</summary>
    NotClosed,

    /// <summary>There is one inside it that is not doubled.</summary>
    Stray,
}

/// <summary>Text in quote marks, as RFC 4180, section 2, rules 5 to 7, has it.</summary>
internal static class QuotedText
{
    /// <summary>Takes the quote marks off a cell and the space inside them, or leaves the cell as it is where they are at fault.</summary>
    /// <param name="raw">The cell, with at least one quote mark in it and no space around it.</param>
    /// <param name="plain">Where the text goes.</param>
    /// <param name="length">How long it is.</param>
    public static QuoteFault TakeOff(ReadOnlySpan<char> raw, Span<char> plain, out int length)
    {
        QuoteFault fault = Fault(raw);
        if (fault != QuoteFault.None)
        {
            raw.CopyTo(plain);
            length = raw.Length;
            return fault;
        }

        length = 0;
        ReadOnlySpan<char> inside = CellText.Trim(raw[1..^1]);
        for (int i = 0; i < inside.Length; i++)
        {
            plain[length++] = inside[i];
            i += inside[i] == '"' ? 1 : 0;
        }

        return QuoteFault.None;
    }

    private static QuoteFault Fault(ReadOnlySpan<char> raw)
    {
        if (raw[0] != '"')
        {
            return QuoteFault.Stray;
        }

        int i = 1;
        while (i < raw.Length)
        {
            if (raw[i] != '"')
            {
                i++;
            }
            else if (i + 1 < raw.Length && raw[i + 1] == '"')
            {
                i += 2;
            }
            else
            {
                return i + 1 == raw.Length ? QuoteFault.None : QuoteFault.Stray;
            }
        }

        return QuoteFault.NotClosed;
    }
}
