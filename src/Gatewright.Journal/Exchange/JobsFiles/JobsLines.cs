using Gatewright.Core;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>The jobs read so far, each once; beside those on record.</summary>
internal sealed class JobsLines(JobRecord known)
{
    private readonly Dictionary<(DateOnly Day, string Name, GatePlace? Gate, string Code), (FinishedJob Job, RowPlace First)> _jobs = [];

    /// <summary>Those that are not on record.</summary>
    public IReadOnlyCollection<FinishedJob> New => [.. _jobs.Values.Select(line => line.Job)];

    /// <summary>How many rows told what was known.</summary>
    public int Again { get; private set; }

    public void Add(FinishedJob job, Reporter report)
    {
        if (known.Like(job) is { } onRecord)
        {
            Again++;
            if (onRecord.FoundCode != job.FoundCode)
            {
                report.OtherThanOnRecord(job, onRecord);
            }
        }
        else if (_jobs.TryGetValue(job.Key, out (FinishedJob Job, RowPlace First) before))
        {
            Again++;
            if (before.Job.FoundCode != job.FoundCode)
            {
                report.OtherThanBefore(job, before.Job, before.First);
            }
            else
            {
                report.ToldTwice(job, before.First);
            }
        }
        else
        {
            _jobs.Add(job.Key, (job, report.Place));
        }
    }
}
