namespace Gatewright.Journal.Exchange;

/// <summary>Finds what separates the columns, from the line that names them.</summary>
internal static class HeaderLine
{
    /// <summary>The characters that may separate columns.</summary>
    public static ReadOnlySpan<char> Separators => ",;\t";

    private const string Declaration = "sep=";

    /// <summary>Whether a name is that of a column.</summary>
    public delegate bool NameTest(ReadOnlySpan<char> name);

    /// <summary>Whether a line has nothing on it but separators, spaces and quote marks.</summary>
    public static bool IsBlank(ReadOnlySpan<char> line)
    {
        foreach (char c in line)
        {
            if (c != '"' && !Separators.Contains(c) && !CellText.IsSpace(c))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The separator that makes the most names of ours, else the most columns, else the comma.</summary>
    public static char Separator(ReadOnlySpan<char> line, NameTest isColumn)
    {
        if (IsDeclaration(line, out char declared))
        {
            return declared;
        }

        char best = ',';
        int most = -1;
        foreach (char separator in Separators)
        {
            // A column more never outweighs a name more: there are fewer characters in a row than this factor.
            int worth = (KnownNames(line, separator, isColumn) * RowGuard.LongestRow) + line.Count(separator);
            if (worth > most)
            {
                (best, most) = (separator, worth);
            }
        }

        return best;
    }

    /// <summary>Whether a line declares the separator, as spreadsheets write it above the header: "sep=;".</summary>
    public static bool IsDeclaration(ReadOnlySpan<char> line, out char separator)
    {
        line = CellText.Trim(line.Trim('"'));
        bool declares = line.Length == Declaration.Length + 1
            && line.StartsWith(Declaration, StringComparison.OrdinalIgnoreCase)
            && Separators.Contains(line[^1]);
        separator = declares ? line[^1] : default;
        return declares;
    }

    private static int KnownNames(ReadOnlySpan<char> line, char separator, NameTest isColumn)
    {
        int known = 0;
        foreach (Range part in line.Split(separator))
        {
            known += isColumn(line[part].Trim("\" ")) ? 1 : 0;
        }

        return known;
    }
}
