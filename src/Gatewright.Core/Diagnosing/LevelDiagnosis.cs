using Gatewright.Core.Measuring;

namespace Gatewright.Core.Diagnosing;

/// <summary>How the boat probably lay in one of its lyings, averaged over all stories.</summary>
/// <param name="Lie">The lying.</param>
/// <param name="BowHigh">Its rise to the bow.</param>
/// <param name="PortLow">Its roll to port.</param>
public sealed record LevelDiagnosis(BoatLie Lie, Estimate BowHigh, Estimate PortLow);
