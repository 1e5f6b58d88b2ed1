using Gatewright.Cli.Inputs;
using Gatewright.Words;

namespace Gatewright.Cli.Print;

/// <summary>What was asked of every part of <c>gatewright print</c>.</summary>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Place">A club in a store instead of files.</param>
/// <param name="Boats">Names of the boats meant; none means all.</param>
/// <param name="Output">The file to write.</param>
/// <param name="Replace">Whether what is there by that name is replaced.</param>
/// <param name="Language">The language on paper.</param>
internal sealed record PrintRequest(
    IReadOnlyList<string> Files, StorePlace? Place, IReadOnlyList<string> Boats, string Output, bool Replace, Language Language)
{
    /// <summary>What to judge by, a name or a file; null for what the shed judges by itself.</summary>
    public string? Standard { get; init; }
}
