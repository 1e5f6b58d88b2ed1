namespace Gatewright.Drawings.Teaching;

/// <summary>What stands under each picture of a scene; it is also what a screen reader says, so numbers belong in it.</summary>
/// <param name="FromAbove">Under the oar from above.</param>
/// <param name="FromSide">Under the gate from the side.</param>
/// <param name="Blade">Under the blade in the water.</param>
/// <param name="FromAstern">Under the hull from astern.</param>
/// <param name="Upright">Under the gauge on the boat as it lies on trestles.</param>
/// <param name="Inverted">Under the gauge on the boat upside down.</param>
public sealed record SceneText(string FromAbove, string FromSide, string Blade, string FromAstern, string Upright, string Inverted);
