using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>Where on an oar the hands and the water act, and how wide its gate is.</summary>
/// <remarks>
/// The grip and the blade's middle are this project's judgement: they scale the load and move every angle a little, but
/// hardly what a change does.
/// </remarks>
/// <param name="GateWidth">
/// w: from one cheek of the gate to the other along the shaft. The collar bears on the inner one, so the pin stands w/2
/// outboard of the collar's face. 4 cm, as the rigging survey of 2017 has it.
/// </param>
/// <param name="Grip">From the handle's end to the middle of the hands on it: sculling 6 cm, sweep 15 cm.</param>
/// <param name="BladeMiddle">From the blade's tip to where the water acts: sculling 22 cm, sweep 27 cm, half a blade.</param>
public sealed record OarPoints(Length GateWidth, Length Grip, Length BladeMiddle)
{
    private static readonly OarPoints Sweep = Of(4, 15, 27);
    private static readonly OarPoints Scull = Of(4, 6, 22);

    /// <summary>The usual ones.</summary>
    public static OarPoints Usual(Rowing rowing) => rowing == Rowing.Sweep ? Sweep : Scull;

    private static OarPoints Of(double gate, double grip, double blade) =>
        new(Length.FromCentimetres(gate), Length.FromCentimetres(grip), Length.FromCentimetres(blade));
}
