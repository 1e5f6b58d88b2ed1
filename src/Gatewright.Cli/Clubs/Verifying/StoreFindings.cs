using System.Globalization;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Store.Checking;

namespace Gatewright.Cli.Clubs.Verifying;

/// <summary>What was found when a store was looked through, told.</summary>
internal static class StoreFindings
{
    /// <param name="did">What was done, for programs.</param>
    /// <param name="what">How the first sentence begins.</param>
    /// <param name="store">The store.</param>
    /// <param name="file">The backup, if there is one.</param>
    /// <param name="report">What was found.</param>
    public static Answer Told(string did, string what, string store, string? file, StoreReport report)
    {
        long beyond = report.Faults + report.Notices - report.Findings.Count;
        List<string> sentences =
        [
            $"{what}: {Counted.Of(report.Clubs, "club")}, {Counted.Of(report.Entries, "entry", "entries")}, {Counted.Of(report.Blobs, "photo")}; {Judged(report)}.",
            .. report.Findings.OrderByDescending(f => f.Weight).Select(Sentence),
        ];
        if (beyond > 0)
        {
            sentences.Add($"And {Counted.Of(beyond, "more finding")}.");
        }

        return new Answer.Done(
            report.IsSound ? ExitStatus.Good : ExitStatus.Attention,
            sentences,
            new StoreReportDocument(
                did, store, file, report.IsSound, report.Clubs, report.Entries, report.Blobs, report.Faults, report.Notices,
                [.. report.Findings.Select(f => new ListedFinding(Word(f.Weight), f.Club, f.Number, f.What, f.Remedy))]));
    }

    private static string Judged(StoreReport report) => (report.Faults, report.Notices) switch
    {
        (0, 0) => "all as it was written",
        (0, _) => $"all as it was written, {Counted.Of(report.Notices, "notice")}",
        (_, 0) => $"NOT as it was written, {Counted.Of(report.Faults, "fault")}",
        _ => $"NOT as it was written, {Counted.Of(report.Faults, "fault")}, {Counted.Of(report.Notices, "notice")}",
    };

    /// <summary>"Fault, club demo, entry 7: …"</summary>
    private static string Sentence(StoreFinding finding)
    {
        string weight = finding.Weight == FindingWeight.Fault ? "Fault" : "Notice";
        string club = finding.Club is { } id ? $", club {id}" : string.Empty;
        string entry = finding.Number is { } number ? string.Create(CultureInfo.InvariantCulture, $", entry {number}") : string.Empty;
        return $"{weight}{club}{entry}: {finding.What} {finding.Remedy}";
    }

    private static string Word(FindingWeight weight) => weight == FindingWeight.Fault ? "fault" : "notice";
}
