using Gatewright.Cli.Inputs;

namespace Gatewright.Cli.CheckShed;

/// <summary>What a person named of a shed.</summary>
/// <param name="Command">The command, whose help says more.</param>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Standard">A standard's name, or a file; null for the usual one.</param>
/// <param name="Chances">A file with the club's table of chances; null for the defaults.</param>
/// <param name="Boats">Names of the boats asked for; none means all.</param>
/// <param name="Place">A club in a store instead of files.</param>
internal sealed record ShedRequest(
    string Command,
    IReadOnlyList<string> Files,
    string? Standard,
    string? Chances,
    IReadOnlyList<string> Boats,
    StorePlace? Place);
