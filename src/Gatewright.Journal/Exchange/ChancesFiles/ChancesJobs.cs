using System.Globalization;
using System.Text.Json;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.ChancesFiles;

/// <summary>Reads the jobs on record.</summary>
internal sealed class ChancesJobs(JsonReporter report)
{
    /// <summary>The record; not to be used when there are errors.</summary>
    public JobRecord Read(string path, JsonElement list)
    {
        if (list.ValueKind != JsonValueKind.Array)
        {
            report.Error(path, list, "is not a list: expected the jobs in square brackets, [ ].");
            return JobRecord.Empty;
        }

        var jobs = new Dictionary<object, (FinishedJob Job, string At)>();
        foreach ((JsonElement element, string at) in list.EnumerateArray()
            .Select((element, i) => (element, string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]"))))
        {
            if (new ChancesJob(report, at, element).Read() is not { } job)
            {
                continue;
            }

            if (jobs.TryAdd(job.Key, (job, at)))
            {
                continue;
            }

            (FinishedJob before, string where) = jobs[job.Key];
            report.Missing(at, before.FoundCode == job.FoundCode
                ? $"is the same job as {where}: keep one."
                : $"disagrees with {before.FoundCode} in {where}, for the same {job.Thing.Code} on the same day: correct the wrong one, and keep one.");
        }

        return report.Errors.Count == 0 ? JobRecord.Empty.And(jobs.Values.Select(j => j.Job)) : JobRecord.Empty;
    }
}
