namespace Gatewright.Cli.CheckShed;

/// <summary>What a person named of a shed.</summary>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Standard">A built-in standard's name, or a file.</param>
/// <param name="Chances">A file with the club's table of chances; null for the defaults.</param>
/// <param name="Boats">Names of the boats asked for; none means all.</param>
internal sealed record ShedRequest(
    IReadOnlyList<string> Files, string Standard, string? Chances, IReadOnlyList<string> Boats);
