using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Chances;

/// <summary>What was asked of <c>gatewright chances</c>.</summary>
/// <param name="File">The table's file; null for the defaults.</param>
/// <param name="Jobs">Files of finished jobs to learn from.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record ChancesRequest(string? File, IReadOnlyList<string> Jobs, Form Form, int? Width);
