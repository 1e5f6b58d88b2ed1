using Gatewright.Words;

namespace Gatewright.Cli.Speaking;

/// <summary>Signs as words: screen readers pass over some of them, and each in its own way.</summary>
internal static class Speech
{
    /// <summary>"4.0° ± 0.4" → "4.0 degrees plus or minus 0.4".</summary>
    public static string Of(string text) => Sentence.Capital(text
        .Replace("±", "plus or minus", StringComparison.Ordinal)
        .Replace("°", " degrees", StringComparison.Ordinal)
        .Replace(" %", " percent", StringComparison.Ordinal));
}
