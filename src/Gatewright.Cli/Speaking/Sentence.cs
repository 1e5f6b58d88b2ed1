namespace Gatewright.Cli.Speaking;

/// <summary>How sentences begin.</summary>
internal static class Sentence
{
    /// <summary>"seat 3 port" → "Seat 3 port".</summary>
    public static string Capital(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
