namespace Gatewright.Words;

/// <summary>How sentences begin.</summary>
public static class Sentence
{
    /// <summary>"seat 3 port" → "Seat 3 port".</summary>
    public static string Capital(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
    }
}
