namespace Gatewright.Journal.Exchange;

/// <summary>A row's cells by their columns.</summary>
internal sealed class RowCells(RowFields fields, ColumnMap map)
{
    public ColumnMap Map => map;

    public ReadOnlySpan<char> this[Column column] => fields[map[column]];

    public ReadOnlySpan<char> At(int index) => fields[index];

    /// <summary>A cell that stands beyond the last column, or nothing.</summary>
    public ReadOnlySpan<char> Beyond => fields.CountUsed > map.Count ? fields[fields.CountUsed - 1] : default;

    public int Count => fields.Count;

    public int CountUsed => fields.CountUsed;
}
