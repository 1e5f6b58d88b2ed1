using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.ChancesFiles;

/// <summary>A table of chances that was read from a file, or everything that is wrong with the file.</summary>
/// <param name="Table">The table; null when there are errors.</param>
/// <param name="Errors">What has to be mended first, in the order of the format.</param>
public sealed record ChancesInput(ClubChances? Table, IReadOnlyList<InputProblem> Errors);
