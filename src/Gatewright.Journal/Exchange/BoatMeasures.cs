using Gatewright.Core;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Exchange;

/// <summary>What a file has of a boat's rig.</summary>
/// <param name="Boat">The boat's name.</param>
/// <param name="Class">Its class.</param>
/// <param name="Measures">The measures in the order of the rows.</param>
public sealed record BoatMeasures(string Boat, BoatClass Class, IReadOnlyList<WrittenMeasure> Measures)
{
    /// <summary>The measures as the core takes them.</summary>
    public IReadOnlyList<RigReading> Readings => [.. Measures.Select(m => m.Reading)];
}

/// <summary>A measure of the rig as it is written down.</summary>
/// <param name="Reading">What was taken, in the measure's own unit.</param>
/// <param name="Value">The figure as written.</param>
/// <param name="Unit">The unit it is written in.</param>
/// <param name="Side">The side that is written beside it; of a seat's measure too, where it says on which side a sweep seat is rigged.</param>
public readonly record struct WrittenMeasure(RigReading Reading, decimal Value, RigUnit Unit, Side? Side);
