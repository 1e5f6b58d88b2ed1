using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>Finished jobs as CSV: what a spreadsheet saves.</summary>
/// <remarks>The format is in docs/chances.md. Reading does not depend on the culture.</remarks>
public static class JobsCsv
{
    /// <summary>Reads files of jobs to their ends, or as far as they can be read.</summary>
    /// <remarks>Never fails over what a file holds; a stream that cannot be read throws as streams do.</remarks>
    /// <param name="sources">The files.</param>
    /// <param name="known">The jobs on record: those that are told again are not counted again.</param>
    public static JobsInput Read(IEnumerable<ReadingsSource> sources, JobRecord known)
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(known);
        var problems = new Problems();
        var lines = new JobsLines(known);
        int index = 0;
        foreach (ReadingsSource source in sources)
        {
            JobsReader.Read(source, index++, lines, problems);
        }

        bool isWrong = problems.Errors.Any;
        return new(
            isWrong ? known : known.And(lines.New),
            isWrong ? 0 : lines.New.Count,
            isWrong ? 0 : lines.Again,
            problems.Errors.InOrder(),
            problems.Warnings.InOrder(),
            problems.Errors.Beyond);
    }
}
