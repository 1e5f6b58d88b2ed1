namespace Gatewright.Journal.Exchange;

/// <summary>A table that people keep beside their readings: its columns, and what it is a table of.</summary>
/// <param name="Things">"stores", "jobs".</param>
/// <param name="Row">What a row stands for, "each part and size".</param>
/// <param name="Columns">The columns, in the order in which people think of them.</param>
internal sealed record TableFormat(string Things, string Row, IReadOnlyList<ReadingsColumn> Columns)
{
    /// <summary>The columns' names, "part, size, count, note".</summary>
    public string Names => string.Join(", ", Columns.Select(column => column.Name));

    /// <summary>Which column has that name; -1 when none has.</summary>
    public int Find(ReadOnlySpan<char> name)
    {
        for (int i = 0; i < Columns.Count; i++)
        {
            if (CellText.SameName(name, Columns[i].Name))
            {
                return i;
            }
        }

        return -1;
    }
}
