using System.Text.RegularExpressions;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>What a terminal takes as orders, not as text.</summary>
internal static partial class Escapes
{
    /// <summary>The text alone. Blanks at the ends of lines go too: a coloured page may pad with them.</summary>
    public static string StripFrom(string text) =>
        TrailingBlanks().Replace(Sequence().Replace(text, string.Empty), string.Empty);

    [GeneratedRegex("\e\\[[0-9;]*m")]
    private static partial Regex Sequence();

    [GeneratedRegex(" +(?=\n)")]
    private static partial Regex TrailingBlanks();
}
