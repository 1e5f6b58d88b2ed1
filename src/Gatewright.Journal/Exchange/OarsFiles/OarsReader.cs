namespace Gatewright.Journal.Exchange.OarsFiles;

/// <summary>Reads a file of oars.</summary>
internal sealed class OarsReader : TableReader
{
    private readonly List<OarRow> _rows = [];
    private OarCells? _cells;

    private OarsReader(SourceText text, Reporter report)
        : base(text, report, name => OarsFormat.Table.Find(name) >= 0)
    {
    }

    public static OarsInput Read(string name, Stream content)
    {
        using var text = new SourceText(content);
        var problems = new Problems();
        var reader = new OarsReader(text, new(problems, new(0, name, 1)));
        reader.ReadAll();
        return new(
            problems.Errors.Any ? [] : reader._rows, problems.Errors.InOrder(), problems.Warnings.InOrder(), problems.Errors.Beyond);
    }

    /// <inheritdoc/>
    protected override bool ReadHeader()
    {
        if (TableColumns.Of(Fields, OarsFormat.Table, Report) is not { } columns)
        {
            return false;
        }

        _cells = new(Fields, columns, Report);
        return true;
    }

    /// <inheritdoc/>
    protected override void ReadRow()
    {
        if (_cells!.Row() is { } row)
        {
            _rows.Add(row);
        }
    }

    /// <inheritdoc/>
    protected override void TellEmpty() => Report.NoTable(OarsFormat.Table);

    /// <summary>A header with nothing under it is a club without oars.</summary>
    protected override void TellOnlyHeader()
    {
    }
}

/// <summary>The oars of a club as CSV: what a spreadsheet saves.</summary>
/// <remarks>The format is in docs/oars.md. Reading does not depend on the culture.</remarks>
public static class OarsCsv
{
    /// <summary>Reads a file of oars to its end, or as far as it can be read.</summary>
    /// <remarks>Never fails over what the file holds; a stream that cannot be read throws as streams do.</remarks>
    /// <param name="name">The file as messages call it.</param>
    /// <param name="content">Its bytes. Read once from where it stands, and left open.</param>
    public static OarsInput Read(string name, Stream content)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(content);
        return OarsReader.Read(name, content);
    }
}
