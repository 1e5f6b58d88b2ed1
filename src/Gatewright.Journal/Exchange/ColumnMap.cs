namespace Gatewright.Journal.Exchange;

/// <summary>Which cell of a row belongs to which column, as the header says.</summary>
internal sealed class ColumnMap
{
    private readonly int[] _indexes = new int[ReadingsFormat.Columns.Count];
    private readonly List<(int Index, string Name)> _foreign = [];

    private ColumnMap(RowFields header)
    {
        Array.Fill(_indexes, -1);
        Count = header.Count;
        for (int i = 0; i < header.Count; i++)
        {
            Place(i, header[i]);
        }
    }

    /// <summary>How many columns the header has, nameless ones at its end included.</summary>
    public int Count { get; }

    /// <summary>The columns that are none of ours, nameless ones included.</summary>
    public IReadOnlyList<(int Index, string Name)> Foreign => _foreign;

    /// <summary>Whether the file is a list of racks and their levels, without a reading.</summary>
    public bool IsOfRacks => Has(Column.Item) && Has(Column.Rack) && !Has(Column.Boat) && !Has(Column.Reading);

    /// <summary>Where a column stands, -1 where it does not.</summary>
    public int this[Column column] => _indexes[(int)column];

    private List<Column> Twice { get; } = [];

    /// <summary>The column of that name, or null.</summary>
    public static Column? Find(ReadOnlySpan<char> name)
    {
        for (int i = 0; i < ReadingsFormat.Columns.Count; i++)
        {
            if (CellText.SameName(name, ReadingsFormat.Columns[i].Name))
            {
                return (Column)i;
            }
        }

        return null;
    }

    /// <summary>The columns of a header, or null when they do not make a file of readings.</summary>
    public static ColumnMap? Of(RowFields header, Reporter report)
    {
        var map = new ColumnMap(header);
        if (Array.TrueForAll(map._indexes, i => i < 0))
        {
            report.NoHeader(header[0]);
            return null;
        }

        List<Column> missing = map.Missing();
        foreach (Column column in map.Twice)
        {
            report.ColumnTwice(column);
        }

        if (missing.Count > 0)
        {
            report.MissingColumns(missing, map.Foreign);
        }

        foreach ((int _, string name) in map.Foreign.Where(f => f.Name.Length > 0))
        {
            report.ForeignColumn(name);
        }

        return missing.Count + map.Twice.Count == 0 ? map : null;
    }

    public bool Has(Column column) => this[column] >= 0;

    /// <summary>The column that stands somewhere, or null when it is none of ours.</summary>
    public Column? At(int index) => Array.IndexOf(_indexes, index) is >= 0 and var column ? (Column)column : null;

    private void Place(int index, ReadOnlySpan<char> name)
    {
        if (Find(name) is not Column column)
        {
            _foreign.Add((index, NameText.Tidy(name)));
        }
        else if (Has(column))
        {
            Twice.Add(column);
        }
        else
        {
            _indexes[(int)column] = index;
        }
    }

    private List<Column> Missing()
    {
        List<Column> needed = IsOfRacks
            ? [Column.BowHigh, Column.PortLow]
            : [.. Enum.GetValues<Column>().Where(c => ReadingsFormat.Columns[(int)c].IsRequired)];
        if (!IsOfRacks && !Has(Column.Item))
        {
            needed.Add(Column.At);
        }

        return needed.FindAll(c => !Has(c));
    }
}
