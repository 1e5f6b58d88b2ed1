using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Words;

namespace Gatewright.Journal.Reporting;

/// <summary>
/// Damage in the journal: a note that begins with the word for it, as a report of damage writes it. In whichever language it was
/// told, it is known in all.
/// </summary>
public static class Damage
{
    private static readonly string[] Begins = [.. new[] { Wording.English, Wording.German }.Select(say => Sentence.Capital(say.Names.Damage))];

    /// <summary>What a note of damage says, in one language: "Damage, seat 3 port: a crack".</summary>
    public static string Text(GatePlace? gate, string? text, Wording say)
    {
        ArgumentNullException.ThrowIfNull(say);
        string told = Sentence.Capital(Briefly(gate, say));
        return text is null ? told : $"{told}: {text}";
    }

    /// <summary>That it is damage, and where: "damage, seat 3 port".</summary>
    public static string Briefly(GatePlace? gate, Wording say)
    {
        ArgumentNullException.ThrowIfNull(say);
        return gate is { } at ? $"{say.Names.Damage}, {say.Names.Gate(at)}" : say.Names.Damage;
    }

    /// <summary>Whether a note tells of damage.</summary>
    public static bool Is(Noted note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return Array.Exists(Begins, word => note.Text.StartsWith(word, StringComparison.Ordinal)
            && (note.Text.Length == word.Length || note.Text[word.Length] is ':' or ','));
    }
}
