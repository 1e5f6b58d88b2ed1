namespace Gatewright.Journal.Exchange;

/// <summary>Reads one source of readings into the shed.</summary>
internal sealed class SourceReader : TableReader
{
    private readonly Shed _shed;
    private DataRow? _rows;

    private SourceReader(SourceText text, RowPlace start, Shed shed)
        : base(text, new(shed.Problems, start), name => ColumnMap.Find(name) is not null) => _shed = shed;

    public static void Read(ReadingsSource source, int index, Shed shed)
    {
        using var text = new SourceText(source.Content);
        new SourceReader(text, new(index, source.Name, 1), shed).ReadAll();
    }

    /// <inheritdoc/>
    protected override bool ReadHeader()
    {
        if (ColumnMap.Of(Fields, Report) is not ColumnMap map)
        {
            return false;
        }

        _rows = new(new(Fields, map), Report, _shed, Separator);
        return true;
    }

    /// <inheritdoc/>
    protected override void ReadRow() => _rows!.Read();

    /// <inheritdoc/>
    protected override void TellEmpty() => Report.Empty();

    /// <inheritdoc/>
    protected override void TellOnlyHeader() => Report.OnlyHeader();
}
