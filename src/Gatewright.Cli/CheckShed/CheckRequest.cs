using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.CheckShed;

/// <summary>What was asked of <c>gatewright check</c>.</summary>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Standard">A standard's name, or a file; null for the usual one.</param>
/// <param name="Chances">A file with the club's table of chances; null for the defaults.</param>
/// <param name="Boats">Names of the boats to check; none means all.</param>
/// <param name="Place">A club in a store instead of files.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="All">Whether sound boats, too, are drawn in full.</param>
/// <param name="Explain">Whether to say where the uncertainties come from.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record CheckRequest(
    IReadOnlyList<string> Files,
    string? Standard,
    string? Chances,
    IReadOnlyList<string> Boats,
    StorePlace? Place,
    Form Form,
    bool All,
    bool Explain,
    int? Width);
