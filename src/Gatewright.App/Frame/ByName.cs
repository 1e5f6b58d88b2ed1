namespace Gatewright.App.Frame;

/// <summary>The order of names in a list: whatever their case, with ä beside a as in a German telephone book's first kind.</summary>
/// <remarks>DIN 5007-1 (from memory): ä, ö and ü sort as a, o and u, ß as ss. The browser's program carries no culture data.</remarks>
public sealed class ByName : IComparer<string?>
{
    private ByName()
    {
    }

    /// <summary>The order.</summary>
    public static ByName Order { get; } = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        int folded = string.CompareOrdinal(Folded(x), Folded(y));
        return folded != 0 ? folded : string.CompareOrdinal(x, y);
    }

    private static string? Folded(string? name) => name?.ToUpperInvariant()
        .Replace('Ä', 'A').Replace('Ö', 'O').Replace('Ü', 'U').Replace("ß", "SS", StringComparison.Ordinal);
}
