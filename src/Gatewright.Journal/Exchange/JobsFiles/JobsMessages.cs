using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>What there is to say about a file of jobs.</summary>
internal static class JobsMessages
{
    /// <summary>What can be found, in a sentence.</summary>
    public static string Found { get; } = $"{Causes.NoneCode}, {JobsFormat.FoundCauses.Choice}; several at one gate with + between, each once";

    public static void NoFinding(this Reporter report, ReadOnlySpan<char> value) => report.CellError(
        "found", value, $"is nothing that is found: expected {Found}.");

    public static void NoKind(this Reporter report, ReadOnlySpan<char> value) => report.CellError(
        "checked", value, $"is nothing that is checked: expected {JobsFormat.Kinds.Choice}; blank is what the cause is found in.");

    public static void NotFoundThere(this Reporter report, Cause cause, CheckedKind kind) => report.CellError(
        "found", cause.Code(), $"goes with {JobsFormat.Kinds.Word(CheckedKinds.In(cause))}, and what was checked is {JobsFormat.Kinds.Word(kind)}: correct one of the two.");

    public static void NoGateOf(this Reporter report, string column, ReadOnlySpan<char> value, CheckedKind kind) => report.CellError(
        column, value, $"does not go with a {JobsFormat.Kinds.Word(kind)}, which is of no one gate: leave it blank.");

    public static void NoDay(this Reporter report, ReadOnlySpan<char> value) => report.CellError(
        "date", value, $"is not a day: expected year, month and day, such as 2026-05-02, or day, month and year with dots, such as 2.5.2026.");

    public static void NoName(this Reporter report, string column, ReadOnlySpan<char> value) => report.CellError(
        column, value, $"is not a name: expected text of 1 to {NameText.Longest} visible characters.");

    public static void OtherThanOnRecord(this Reporter report, FinishedJob job, FinishedJob known) => report.CellError(
        "found", job.FoundCode, $"disagrees with the record, which has {known.FoundCode} for the same {job.Thing.Code} on that day: correct the row, or take that job out of the file of chances.");

    public static void OtherThanBefore(this Reporter report, FinishedJob job, FinishedJob known, RowPlace first) => report.CellError(
        "found", job.FoundCode, $"disagrees with {known.FoundCode} in {first.SeenFrom(report.Place)}, for the same {job.Thing.Code} on the same day: correct the wrong one.");

    public static void ToldTwice(this Reporter report, FinishedJob job, RowPlace first) => report.WarnOnce(
        "boat", job.Thing.Name, $"has a row that stands in {first.SeenFrom(report.Place)} too: the job is counted once.");
}
