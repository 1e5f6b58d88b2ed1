using Gatewright.Core.Mending;

namespace Gatewright.Journal.Exchange.StoresFiles;

/// <summary>What a file of stores says, or everything that is wrong with it: never a part of both.</summary>
/// <param name="Stores">The parts; none when there are errors.</param>
/// <param name="Errors">What has to be mended first, in the order of lines; at most 1,000.</param>
/// <param name="Warnings">What was understood but looks unmeant; at most 1,000.</param>
/// <param name="ErrorsBeyond">How many more errors there are than <paramref name="Errors"/> holds.</param>
public sealed record StoresInput(
    Stores Stores, IReadOnlyList<InputProblem> Errors, IReadOnlyList<InputProblem> Warnings, int ErrorsBeyond);
