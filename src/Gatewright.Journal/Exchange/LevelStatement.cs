using Gatewright.Core.Geometry;

namespace Gatewright.Journal.Exchange;

/// <summary>What a row says about the level of its boat, or of a rack.</summary>
/// <param name="Source">How it was come by.</param>
/// <param name="Attitude">The two angles, where they were read.</param>
internal readonly record struct LevelStatement(LevelSource Source, HullAttitude Attitude = default);
