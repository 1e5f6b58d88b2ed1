using Gatewright.Core.Mending;

namespace Gatewright.Journal.Exchange.StoresFiles;

/// <summary>Reads a file of stores.</summary>
internal sealed class StoresReader : TableReader
{
    private readonly StoresLines _lines;
    private StoresRow? _row;

    private StoresReader(SourceText text, Reporter report)
        : base(text, report, name => StoresFormat.Table.Find(name) >= 0) => _lines = new(report);

    public static StoresInput Read(string name, Stream content)
    {
        using var text = new SourceText(content);
        var problems = new Problems();
        var reader = new StoresReader(text, new(problems, new(0, name, 1)));
        reader.ReadAll();
        Stores stores = problems.Errors.Any ? Stores.Empty : Stores.Of(reader._lines.All);
        return new(stores, problems.Errors.InOrder(), problems.Warnings.InOrder(), problems.Errors.Beyond);
    }

    /// <inheritdoc/>
    protected override bool ReadHeader()
    {
        if (TableColumns.Of(Fields, StoresFormat.Table, Report) is not { } columns)
        {
            return false;
        }

        _row = new(Fields, columns, Report, Separator);
        return true;
    }

    /// <inheritdoc/>
    protected override void ReadRow()
    {
        if (_row!.Read() is { } line)
        {
            _lines.Add(line);
        }
    }

    /// <inheritdoc/>
    protected override void TellEmpty() => Report.NoTable(StoresFormat.Table);

    /// <summary>A header with nothing under it is a bare shelf.</summary>
    protected override void TellOnlyHeader()
    {
    }
}
