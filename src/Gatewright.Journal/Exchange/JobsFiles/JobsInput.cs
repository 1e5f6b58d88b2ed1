using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>What files of jobs add to a record, or everything that is wrong with them: never a part of both.</summary>
/// <param name="Jobs">The record with them; as it was when there are errors.</param>
/// <param name="Added">How many were new.</param>
/// <param name="Again">How many rows told a job that was known.</param>
/// <param name="Errors">What has to be mended first, in the order of files and lines; at most 1,000.</param>
/// <param name="Warnings">What was understood but looks unmeant; at most 1,000.</param>
/// <param name="ErrorsBeyond">How many more errors there are than <paramref name="Errors"/> holds.</param>
public sealed record JobsInput(
    JobRecord Jobs,
    int Added,
    int Again,
    IReadOnlyList<InputProblem> Errors,
    IReadOnlyList<InputProblem> Warnings,
    int ErrorsBeyond);
