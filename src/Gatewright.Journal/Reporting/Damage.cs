using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Reporting;

/// <summary>
/// Damage in the journal: a note that says so. Older notes say it by the word for it at their head alone, as a report of damage wrote it:
/// in whichever language it was told, it is known in all.
/// </summary>
public static class Damage
{
    private static readonly string[] Begins = [.. new[] { Wording.English, Wording.German }.Select(say => Sentence.Capital(say.Names.Damage))];

    /// <summary>A note of damage.</summary>
    /// <param name="thing">What kind of thing it is noted on.</param>
    /// <param name="key">Which one.</param>
    /// <param name="gate">The gate where it is; null where that is not known.</param>
    /// <param name="text">In the words of whoever tells it; null for none.</param>
    /// <param name="say">Their language.</param>
    public static Noted Note(string thing, string key, GatePlace? gate, string? text, Wording say) =>
        new(thing, key, Text(gate, text, say), new(gate?.Seat, gate?.Side, text));

    /// <summary>What is told of damage, in one language: "Damage, seat 3 port: a crack".</summary>
    public static string Text(GatePlace? gate, string? text, Wording say)
    {
        ArgumentNullException.ThrowIfNull(say);
        string told = Sentence.Capital(Briefly(gate, say));
        return text is null ? told : $"{told}: {text}";
    }

    /// <summary>That it is damage, and where: "damage, seat 3 port".</summary>
    public static string Briefly(Noted note, Wording say) => Briefly(GateOf(note), say);

    /// <summary>What a note says, in the language of whoever reads it as far as the program words it; any other as it was written.</summary>
    public static string In(Noted note, Wording say)
    {
        ArgumentNullException.ThrowIfNull(note);
        return note.Damage is { } told ? Text(GateOf(note), told.Text, say) : note.Text;
    }

    /// <summary>Whether a note tells of damage.</summary>
    public static bool Is(Noted note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return note.Damage is not null || Array.Exists(Begins, word => note.Text.StartsWith(word, StringComparison.Ordinal)
            && (note.Text.Length == word.Length || note.Text[word.Length] is ':' or ','));
    }

    /// <summary>The gate that a note is of: that where the damage was told to be, or else the one it is noted on; null for the whole boat.</summary>
    public static GatePlace? GateOf(Noted note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return note.Damage is { Seat: { } seat, Side: { } side } ? new(seat, side) : BoatRemarks.GateOf(new(note.Thing, note.Key));
    }

    private static string Briefly(GatePlace? gate, Wording say)
    {
        ArgumentNullException.ThrowIfNull(say);
        return gate is { } at ? $"{say.Names.Damage}, {say.Names.Gate(at)}" : say.Names.Damage;
    }
}
