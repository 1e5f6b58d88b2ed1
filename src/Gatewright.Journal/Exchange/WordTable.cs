namespace Gatewright.Journal.Exchange;

/// <summary>Words and what they mean, found in any case and with any dash, space or underscore between their parts.</summary>
internal sealed class WordTable<T>(params (string Word, T Meaning)[] entries)
    where T : struct, Enum
{
    public IReadOnlyList<string> Words { get; } = [.. entries.Select(e => e.Word)];

    /// <summary>The words in a sentence: "port or starboard".</summary>
    public string Choice { get; } = entries.Length == 1
        ? entries[0].Word
        : string.Join(", ", entries[..^1].Select(e => e.Word)) + " or " + entries[^1].Word;

    public string Word(T meaning) => Array.Find(entries, e => EqualityComparer<T>.Default.Equals(e.Meaning, meaning)).Word;

    public T? Find(ReadOnlySpan<char> text)
    {
        foreach ((string word, T meaning) in entries)
        {
            if (CellText.SameName(text, word))
            {
                return meaning;
            }
        }

        return null;
    }
}
