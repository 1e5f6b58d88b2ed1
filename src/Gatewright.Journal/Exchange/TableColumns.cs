namespace Gatewright.Journal.Exchange;

/// <summary>Which cell of a row belongs to which column of a format, as the header says.</summary>
internal sealed class TableColumns
{
    private const int NotThere = -1;

    private readonly TableFormat _format;
    private readonly int[] _indexes;

    private TableColumns(TableFormat format, int count)
    {
        (_format, Count) = (format, count);
        _indexes = new int[format.Columns.Count];
        Array.Fill(_indexes, NotThere);
    }

    /// <summary>How many columns the header has, nameless ones at its end included.</summary>
    public int Count { get; }

    /// <summary>Where a column of the format stands in a row; -1 where the header does not have it.</summary>
    public int this[int column] => _indexes[column];

    /// <summary>The columns of a header, or null when they do not make such a table.</summary>
    public static TableColumns? Of(RowFields header, TableFormat format, Reporter report)
    {
        var columns = new TableColumns(format, header.Count);
        List<string> foreign = columns.Place(header, report, out bool isTwice);
        if (Array.TrueForAll(columns._indexes, i => i == NotThere))
        {
            report.NoHeader(header[0], format);
            return null;
        }

        List<string> missing = [.. format.Columns
            .Where((column, i) => column.IsRequired && columns._indexes[i] == NotThere)
            .Select(column => column.Name)];
        if (missing.Count > 0)
        {
            report.MissingColumns(missing, foreign);
        }

        foreach (string name in foreign)
        {
            report.ForeignColumn(name, format);
        }

        return missing.Count == 0 && !isTwice ? columns : null;
    }

    private List<string> Place(RowFields header, Reporter report, out bool isTwice)
    {
        var foreign = new List<string>();
        isTwice = false;
        for (int i = 0; i < header.Count; i++)
        {
            int column = _format.Find(header[i]);
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
                report.ColumnTwice(_format.Columns[column].Name);
            }
        }

        return foreign.FindAll(name => name.Length > 0);
    }
}
