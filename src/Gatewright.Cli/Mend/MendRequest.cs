using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Mend;

/// <summary>What was asked of <c>gatewright mend</c>.</summary>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Stores">The file of stores; null for the club's shelf, or a bare one.</param>
/// <param name="Standard">A standard's name, or a file; null for the usual one.</param>
/// <param name="Chances">A file with the club's table of chances; null for the defaults.</param>
/// <param name="Boats">Names of the boats to mend; none means all.</param>
/// <param name="Place">A club in a store instead of files.</param>
/// <param name="Backstays">Names of the boats whose riggers have backstays that can be set.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record MendRequest(
    IReadOnlyList<string> Files,
    string? Stores,
    string? Standard,
    string? Chances,
    IReadOnlyList<string> Boats,
    StorePlace? Place,
    IReadOnlyList<string> Backstays,
    Form Form,
    int? Width);
