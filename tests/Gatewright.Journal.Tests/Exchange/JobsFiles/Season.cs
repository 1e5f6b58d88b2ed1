using System.Globalization;
using System.Text;
using Gatewright.Journal.Exchange.JobsFiles;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Tests.Exchange.JobsFiles;

/// <summary>Files of jobs for tests, and what comes of reading them.</summary>
internal static class Season
{
    public const string Header = "boat,class,seat,side,checked,gauge,found,date,note";

    public static JobsInput Read(params string[] files) => Onto(JobRecord.Empty, files);

    public static JobsInput Onto(JobRecord known, params string[] files) => JobsCsv.Read(
        files.Select((text, i) => new Gatewright.Journal.Exchange.ReadingsSource(
            files.Length == 1 ? "jobs.csv" : string.Create(CultureInfo.InvariantCulture, $"jobs-{i + 1}.csv"),
            new MemoryStream(Encoding.UTF8.GetBytes(text)))),
        known);

    /// <summary>Rows under the header of the format.</summary>
    public static string Rows(params string[] rows) => Csv.Lines([Header, .. rows]);

    public static string ErrorsOf(params string[] files)
    {
        JobsInput input = Read(files);
        Assert.Equal((0, 0), (input.Jobs.Count, input.Added));
        return Csv.Messages([.. input.Errors.Select(e => e.ToString())]);
    }

    /// <summary>The jobs of files without an error: "gate Heron seat 5 port 2026-05-02 pin-out".</summary>
    public static string[] JobsOf(params string[] files)
    {
        JobsInput input = Read(files);
        Assert.Equal("", Csv.Messages([.. input.Errors.Select(e => e.ToString())]));
        return [.. input.Jobs.Jobs.Select(Told)];
    }

    private static string Told(FinishedJob job) => string.Create(
        CultureInfo.InvariantCulture,
        $"{job.Thing.Code} {job.Thing.Name}{(job.Thing.Place is { } place ? $" {place.Class} {place.Gate}" : "")} {job.Day:yyyy-MM-dd} {job.FoundCode}");
}
