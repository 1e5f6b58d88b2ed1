using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Rig;

namespace Gatewright.Cli.Rigs;

/// <summary>What was asked of <c>gatewright targets</c>.</summary>
/// <param name="Class">The class; null where a boat is named.</param>
/// <param name="Crew">Who rows it; null for women and men together.</param>
/// <param name="Boat">A boat of the club; null for those of a class.</param>
/// <param name="Set">Targets to set.</param>
/// <param name="Member">Who sets them.</param>
/// <param name="Place">A club in a store; null for the starting targets.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record TargetsRequest(
    BoatClass? Class, Crew? Crew, string? Boat, IReadOnlyList<string> Set, string? Member, StorePlace? Place, Form Form, int? Width);
