namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>Reads a file of jobs.</summary>
internal sealed class JobsReader : TableReader
{
    private readonly JobsLines _lines;
    private JobsRow? _row;

    private JobsReader(SourceText text, Reporter report, JobsLines lines)
        : base(text, report, name => JobsFormat.Table.Find(name) >= 0) => _lines = lines;

    public static void Read(ReadingsSource source, int index, JobsLines lines, Problems problems)
    {
        using var text = new SourceText(source.Content);
        new JobsReader(text, new(problems, new(index, source.Name, 1)), lines).ReadAll();
    }

    /// <inheritdoc/>
    protected override bool ReadHeader()
    {
        if (TableColumns.Of(Fields, JobsFormat.Table, Report) is not { } columns)
        {
            return false;
        }

        _row = new(Fields, columns, Report);
        return true;
    }

    /// <inheritdoc/>
    protected override void ReadRow()
    {
        if (_row!.Read() is { } job)
        {
            _lines.Add(job, Report);
        }
    }

    /// <inheritdoc/>
    protected override void TellEmpty() => Report.NoTable(JobsFormat.Table);

    /// <summary>A header with nothing under it is a season without jobs.</summary>
    protected override void TellOnlyHeader()
    {
    }
}
