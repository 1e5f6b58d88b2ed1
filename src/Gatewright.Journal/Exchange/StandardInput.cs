using Gatewright.Core.Judging;

namespace Gatewright.Journal.Exchange;

/// <summary>A standard that was read from a file, or everything that is wrong with the file.</summary>
/// <param name="Standard">The standard; null when there are errors.</param>
/// <param name="Errors">What has to be mended first, in the order of the file.</param>
/// <param name="Warnings">What was understood but deserves a second look.</param>
public sealed record StandardInput(
    Standard? Standard, IReadOnlyList<InputProblem> Errors, IReadOnlyList<InputProblem> Warnings);
