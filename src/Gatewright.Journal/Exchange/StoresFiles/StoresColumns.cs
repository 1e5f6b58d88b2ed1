namespace Gatewright.Journal.Exchange.StoresFiles;

/// <summary>Which cell of a row belongs to which column, as the header says.</summary>
internal sealed class StoresColumns
{
    private const int NotThere = -1;

    private readonly int[] _indexes = [NotThere, NotThere, NotThere, NotThere];

    private StoresColumns(int count) => Count = count;

    /// <summary>How many columns the header has, nameless ones at its end included.</summary>
    public int Count { get; }

    public int Part => _indexes[0];

    public int Size => _indexes[1];

    public int Number => _indexes[2];

    public int Note => _indexes[3];

    /// <summary>Whether a name is that of a column.</summary>
    public static bool IsColumn(ReadOnlySpan<char> name) => Find(name) != NotThere;

    /// <summary>The columns of a header, or null when they do not make a file of stores.</summary>
    public static StoresColumns? Of(RowFields header, Reporter report)
    {
        var columns = new StoresColumns(header.Count);
        List<string> foreign = columns.Place(header, report, out bool isTwice);
        if (Array.TrueForAll(columns._indexes, i => i == NotThere))
        {
            report.NoStoresHeader(header[0]);
            return null;
        }

        List<string> missing = [.. StoresFormat.Columns
            .Where((column, i) => column.IsRequired && columns._indexes[i] == NotThere)
            .Select(column => column.Name)];
        if (missing.Count > 0)
        {
            report.MissingFromStores(missing, foreign);
        }

        foreach (string name in foreign)
        {
            report.ForeignToStores(name);
        }

        return missing.Count == 0 && !isTwice ? columns : null;
    }

    private List<string> Place(RowFields header, Reporter report, out bool isTwice)
    {
        var foreign = new List<string>();
        isTwice = false;
        for (int i = 0; i < header.Count; i++)
        {
            int column = Find(header[i]);
            if (column == NotThere)
            {
                foreign.Add(NameText.Tidy(header[i]));
            }
            else if (_indexes[column] == NotThere)
            {
                _indexes[column] = i;
            }
            else
            {
                isTwice = true;
                report.ColumnTwice(StoresFormat.Columns[column].Name);
            }
        }

        return foreign.FindAll(name => name.Length > 0);
    }

    private static int Find(ReadOnlySpan<char> name)
    {
        for (int i = 0; i < StoresFormat.Columns.Count; i++)
        {
            if (CellText.SameName(name, StoresFormat.Columns[i].Name))
            {
                return i;
            }
        }

        return NotThere;
    }
}
