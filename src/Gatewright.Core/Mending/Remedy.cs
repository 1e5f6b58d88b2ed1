using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending;

/// <summary>One way to mend one cause, with everything a person needs to do it and to prove it.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="Part">The cause it mends.</param>
/// <param name="Change">What it changes in the gate: added to gate pitch and leans.</param>
/// <param name="Steps">What to do, with amount and direction, in the order of the work.</param>
/// <param name="Parts">What it takes from stores.</param>
/// <param name="Minutes">How long it takes, roughly.</param>
/// <param name="Expected">What the gauge should show afterwards; empty where only reading again tells.</param>
public sealed record Remedy(
    RemedyKind Kind,
    CausePart Part,
    GateState Change,
    IReadOnlyList<Work> Steps,
    IReadOnlyList<Part> Parts,
    int Minutes,
    IReadOnlyList<ExpectedReading> Expected)
{
    /// <summary>What to mind while doing it.</summary>
    public IReadOnlyList<Caution> Cautions => Mending.Cautions.For(Kind);

    /// <summary>What the gate is believed to be, the cause taken as given; null where only reading again tells.</summary>
    public GateBelief? Before { get; init; }

    /// <summary>What the gate is to become; null where only reading again tells.</summary>
    public GateBelief? After { get; init; }
}
