using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>One reading that could be taken next.</summary>
/// <param name="Item">Its kind.</param>
/// <param name="Gate">The gate, or the gate of the oar; null for level and gauge.</param>
/// <param name="At">Where in the stroke, for a gate's face.</param>
/// <param name="Gauge">The gauge, where that is what is checked.</param>
public sealed record ReadingChoice(NextItem Item, GatePlace? Gate = null, StrokePoint? At = null, string? Gauge = null)
{
    /// <summary>What to do, in words: "read seat 3 port at the finish".</summary>
    public override string ToString() => Item switch
    {
        NextItem.Gate => $"read {Gate} {At?.Phrase()}",
        NextItem.PinAft => $"hold the gauge to the pin of {Gate} from the side and read its lean to stern or bow",
        NextItem.PinOut => $"hold the gauge to the pin of {Gate} from the end of the boat and read its lean out or in",
        NextItem.GatePitch => $"read the face of {Gate} against its pin",
        NextItem.Level => "read the boat's level, along the keel and across it",
        NextItem.GaugeReversed => "read one face, turn the gauge end for end on it, and read it again",
        _ => $"lay the oar of {Gate} abeam with its blade on the edge of the boat, and read its sleeve",
    };
}
