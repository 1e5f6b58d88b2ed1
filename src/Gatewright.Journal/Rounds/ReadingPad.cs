using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Rounds;

/// <summary>
/// The values that one tap enters: half degrees from a lowest one on, six in a row, always at the same places, so that the
/// thumb learns them.
/// </summary>
/// <param name="Lowest">The first, degrees.</param>
public sealed record ReadingPad(decimal Lowest)
{
    /// <summary>Degrees from one to the next: 0.5.</summary>
    public const decimal Step = 0.5m;

    /// <summary>Values in a row, three degrees: 6.</summary>
    public const int Columns = 6;

    /// <summary>Rows, as many as a phone has room for under an eight: 4.</summary>
    public const int Rows = 4;

    /// <summary>
    /// Of a face from −2 to 9.5: from a blade that dives to twice what a standard asks. Of a pin or a sleeve from −6 to 5.5,
    /// which lean either way.
    /// </summary>
    public static ReadingPad For(ReadItem item) => item is ReadItem.Gate or ReadItem.GatePitch ? OfFaces : OfLeans;

    private static ReadingPad OfFaces { get; } = new(-2);

    private static ReadingPad OfLeans { get; } = new(-6);

    /// <summary>The values, degrees, row by row.</summary>
    public IReadOnlyList<decimal> Values { get; } = [.. Enumerable.Range(0, Columns * Rows).Select(i => Lowest + (i * Step))];

    /// <summary>The value nearest to one that was typed before; null where that lies off the pad.</summary>
    public decimal? Nearest(decimal? value) =>
        value is { } v && Math.Round(v / Step, MidpointRounding.AwayFromZero) * Step is var near && Values.Contains(near) ? near : null;
}
