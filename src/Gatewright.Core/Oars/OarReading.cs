using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Oars;

/// <summary>An occasion on which sleeves were read on one boat as it lay: its readings share the level.</summary>
/// <param name="Key">Which occasion.</param>
/// <param name="Lie">How the boat lay and how its level was known.</param>
public sealed record GunwaleSession(string Key, BoatLie Lie);

/// <summary>A sleeve as it was read on the gunwale.</summary>
/// <param name="Shown">What the gauge showed, positive as <see cref="OarLaidExtensions.IsPositiveToBow"/> tells.</param>
/// <param name="Session">The occasion.</param>
/// <param name="Gauge">The gauge.</param>
/// <param name="Laid">Which way round the oar lay.</param>
public sealed record SleeveReading(Angle Shown, GunwaleSession Session, Gauge Gauge, OarLaid Laid = OarLaid.HandleOut);
