using Gatewright.Core.Rig;

namespace Gatewright.Journal.Rigging;

/// <summary>One measure at one place: what is asked for at a time while a rig is measured.</summary>
/// <param name="Measure">Which measure.</param>
/// <param name="Place">Where.</param>
public readonly record struct RigStep(RigMeasure Measure, RigPlace Place);
