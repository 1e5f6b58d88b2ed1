using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Entries;

/// <summary>
/// What may enter a journal from outside, beyond an envelope in order: of every kind this program knows, a body whose
/// values make sense. Kinds and versions it does not know pass: they are from a newer program, which checked them.
/// </summary>
public static class EntryRules
{
    /// <summary>Characters of a key: 200.</summary>
    public const int LongestKey = 200;

    /// <summary>Characters of a note, a reason, or what was told: 2,000.</summary>
    public const int LongestText = 2_000;

    /// <summary>Items of a list in a body, and fields set at once: 100.</summary>
    public const int MostItems = 100;

    /// <summary>Bytes of a photo: 20 MiB.</summary>
    public const int LargestPhoto = 20 * 1024 * 1024;

    /// <summary>The media types that a photo may have.</summary>
    public static IReadOnlyList<string> PhotoTypes { get; } = ["image/jpeg", "image/png", "image/webp"];

    /// <summary>Everything wrong with an entry's body, each with field, value and remedy; empty when it may enter.</summary>
    public static IReadOnlyList<string> Problems(Entry entry) => Problems(entry, isOfBefore: false, out _);

    /// <summary>The same, with the fact that the entry is; null where it cannot be read.</summary>
    public static IReadOnlyList<string> Problems(Entry entry, out Fact? fact) => Problems(entry, isOfBefore: false, out fact);

    /// <summary>
    /// The same of an entry that was let into a journal before and comes back from a file: measures of the rig were once taken
    /// in any words and units, and stay readable.
    /// </summary>
    public static IReadOnlyList<string> ProblemsOfBefore(Entry entry) => Problems(entry, isOfBefore: true, out _);

    private static IReadOnlyList<string> Problems(Entry entry, bool isOfBefore, out Fact? fact)
    {
        ArgumentNullException.ThrowIfNull(entry);
        fact = FactKinds.Read(entry, out string? problem);
        if (fact is null)
        {
            return [problem!];
        }

        var book = new RuleBook { IsOfBefore = isOfBefore };
        if (entry.Body.Span.ContainsAny((byte)'\n', (byte)'\r'))
        {
            book.Say("body", "several lines", "write it on one line, since a journal has an entry a line");
        }

        if (fact is Retracted retracted)
        {
            book.Text("reason", retracted.Reason, LongestText);
            if (retracted.Entry == entry.Id)
            {
                book.Say("entry", $"{entry.Id}", "an entry cannot retract itself; name an earlier one");
            }
        }
        else
        {
            FactRules.Check(fact, book);
        }

        return book.Problems;
    }
}
