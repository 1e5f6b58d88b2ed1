using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>What the rows of one lying have in common, as they are written.</summary>
internal readonly record struct LyingKey(Lie Lie, DateOnly? Date, LevelStatement Level, RackRows? Rack);

/// <summary>The rows of a boat that say the same about how it lay; what that was is settled when all rows are known.</summary>
internal sealed class Lying(LyingKey key, RowPlace first)
{
    public LyingKey Key => key;

    /// <summary>The first of the rows.</summary>
    public RowPlace First => first;

    /// <summary>How the boat lay, once it is settled; null when it could not be.</summary>
    public BoatLie? Settled { get; set; }
}
