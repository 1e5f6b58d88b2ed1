using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Rig;

namespace Gatewright.Cli.Rigs;

/// <summary>What was asked of <c>gatewright rig</c>.</summary>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Boats">Names of the boats; none means all.</param>
/// <param name="Crew">Who rows them; null for what the club says, or women and men together.</param>
/// <param name="InInches">Whether lengths are told in inches.</param>
/// <param name="Place">A club in a store instead of files.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record RigRequest(
    IReadOnlyList<string> Files, IReadOnlyList<string> Boats, Crew? Crew, bool InInches, StorePlace? Place, Form Form, int? Width);
