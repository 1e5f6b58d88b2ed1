using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>What was asked of <c>gatewright pitch</c>.</summary>
/// <param name="Pitch">The gate and how its boat lies.</param>
/// <param name="Standard">Whose limits to show: a built-in standard's name, or a file.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record PitchRequest(StrokePitch Pitch, string Standard, Form Form, int? Width);
