namespace Gatewright.Journal.Exchange.Sheets;

/// <summary>
/// Words in a cell, so that no spreadsheet runs them: what begins as a formula does gets an apostrophe in front, which is
/// taken off again on reading. Numbers are written as they are.
/// </summary>
public static class SheetText
{
    private const char Shield = '\'';

    /// <summary>"=1+1" → "'=1+1"; "'=1" → "''=1", so that it comes back as it is; "heron" stays.</summary>
    public static string Shielded(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return BeginsFormula(text.AsSpan().TrimStart(Shield)) ? Shield + text : text;
    }

    /// <summary>The words that were shielded: "'=1+1" → "=1+1".</summary>
    public static string Plain(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.StartsWith(Shield) && BeginsFormula(cell.AsSpan().TrimStart(Shield)) ? cell[1..] : cell;
    }

    /// <summary>Blanks in front do not help where a spreadsheet trims; the wide forms are folded by some.</summary>
    private static bool BeginsFormula(ReadOnlySpan<char> text) =>
        CellText.Trim(text) is ['=' or '+' or '-' or '@' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20', ..];
}
