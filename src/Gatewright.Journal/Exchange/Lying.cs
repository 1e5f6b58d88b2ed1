using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>What the rows of one lying have in common, as they are written.</summary>
/// <param name="Lie">Upright or inverted.</param>
/// <param name="Date">The day, if known.</param>
/// <param name="Level">What they say of the level.</param>
/// <param name="Rack">The rack they name.</param>
/// <param name="Mark">What tells them from rows of a day on which the boat lay alike before or after it was moved; null for none.</param>
internal readonly record struct LyingKey(Lie Lie, DateOnly? Date, LevelStatement Level, RackRows? Rack, string? Mark = null);

/// <summary>The rows of a boat that say the same about how it lay; what that was is settled when all rows are known.</summary>
internal sealed class Lying(LyingKey key, RowPlace first)
{
    public LyingKey Key => key;

    /// <summary>The first of the rows.</summary>
    public RowPlace First => first;

    /// <summary>How the boat lay, once it is settled; null when it could not be.</summary>
    public BoatLie? Settled { get; set; }
}
