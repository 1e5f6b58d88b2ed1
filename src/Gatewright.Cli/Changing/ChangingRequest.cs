using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Changing;

/// <summary>What every command about whole rigs is asked.</summary>
/// <param name="Command">The command, whose help says more.</param>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Boat">The boat; null for the only one.</param>
/// <param name="Place">A club in a store instead of files.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record ChangingRequest(
    string Command, IReadOnlyList<string> Files, string? Boat, StorePlace? Place, Form Form, int? Width);
