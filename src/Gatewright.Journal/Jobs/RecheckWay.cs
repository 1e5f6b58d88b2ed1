using Gatewright.Core;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Jobs;

/// <summary>How a boat is laid for a re-check.</summary>
/// <param name="Lie">Upright or inverted.</param>
/// <param name="Level">How its level is known.</param>
/// <param name="BowHigh">Degrees as it lies, where the level is read; null while that is not typed.</param>
/// <param name="PortLow">Degrees as it lies, where the level is read.</param>
/// <param name="Rack">The rack whose level it is.</param>
public sealed record RecheckWay(Lie Lie, LevelBasis Level, decimal? BowHigh = null, decimal? PortLow = null, string? Rack = null)
{
    /// <summary>Whether the level is to be typed in and is not yet: until then the boat counts as levelled by eye.</summary>
    public bool NeedsLevel => Level == LevelBasis.Read && (BowHigh is null || PortLow is null);

    /// <summary>The lying that is recorded before its first reading.</summary>
    public BoatLaid Laid(string lying, string boat) => Level switch
    {
        LevelBasis.Read when NeedsLevel => new(lying, boat, Lie, LevelBasis.ByEye),
        LevelBasis.Read => new(lying, boat, Lie, Level, BowHigh, PortLow),
        LevelBasis.Rack when Rack is not null => new(lying, boat, Lie, Level, Rack: Rack),
        LevelBasis.Rack => new(lying, boat, Lie, LevelBasis.ByEye),
        _ => new(lying, boat, Lie, Level),
    };
}
