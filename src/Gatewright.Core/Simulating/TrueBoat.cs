using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Simulating;

/// <summary>A simulated boat as it really is: what no gauge shows without error.</summary>
/// <param name="Wrong">What is wrong with it or with its reading: none, one cause or two.</param>
/// <param name="Gates">Every gate's pitch and its pin's leans.</param>
/// <param name="Sleeves">What each gate's oar's sleeve adds.</param>
/// <param name="Hull">How the hull really lies against plumb.</param>
/// <param name="GaugeZero">What the gauge really shows on a plumb face.</param>
public sealed record TrueBoat(
    IReadOnlyList<CausePart> Wrong,
    IReadOnlyDictionary<GatePlace, GateState> Gates,
    IReadOnlyDictionary<GatePlace, SleeveError> Sleeves,
    HullAttitude Hull,
    Angle GaugeZero);
