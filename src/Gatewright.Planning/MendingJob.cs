using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;

namespace Gatewright.Planning;

/// <summary>A piece of mending at one gate.</summary>
/// <param name="Option">What is done, with its parts, time and cautions, and what the gate is then.</param>
/// <param name="Expected">What the gauge should show afterwards.</param>
/// <param name="Before">How the gate was judged.</param>
/// <param name="IsForRange">
/// Whether the gate is good by itself, and is moved only so that the boat's gates lie close enough together.
/// </param>
/// <param name="IsProbablySound">Whether probably nothing is wrong with the gate: read it again before taking a spanner to it.</param>
public sealed record MendingJob(
    GateOption Option, IReadOnlyList<ExpectedReading> Expected, Verdict Before, bool IsForRange, bool IsProbablySound)
{
    /// <summary>The gate.</summary>
    public GatePlace Gate => Option.Gate;
}
