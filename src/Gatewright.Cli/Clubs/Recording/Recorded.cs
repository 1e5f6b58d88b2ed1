using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.Clubs.Recording;

/// <summary>What was recorded, told.</summary>
internal static class Recorded
{
    /// <summary>The kinds that files have, in the order in which they are told, and what they are called.</summary>
    private static readonly (string Kind, string One, string Many)[] Words =
    [
        ("reading", "reading", "readings"),
        ("measure", "measure of the rig", "measures of the rig"),
        ("boat-laid", "lying of a boat", "lyings of boats"),
        ("rack-level", "level of a rack", "levels of racks"),
        ("report", "report", "reports"),
        ("mended", "mending", "mendings"),
        ("note", "note", "notes"),
        ("stock-counted", "count of a part", "counts of parts"),
        ("set", "description of a thing", "descriptions of things"),
    ];

    public static Answer Answer(OpenedClub club, RecordRequest request, IReadOnlyList<Entry> entries, IReadOnlyList<InputProblem> warnings)
    {
        string? name = club.Name ?? request.NewClub;
        string title = OpenedClub.TitleOf(club.Id, name);
        Dictionary<string, int> kinds = entries.CountBy(e => e.Kind).ToDictionary();
        string what = string.Join(", ", Words.Where(w => kinds.ContainsKey(w.Kind)).Select(w => Counted.Of(kinds[w.Kind], w.One, w.Many)));
        string sentence = entries.Count == 0
            ? $"Nothing new for {title}: all of it is on record already."
            : $"Recorded in {title} by {request.Member}: {what}; {Counted.Of(entries.Count, "new entry", "new entries")}.";
        return new Answer.Done(
            ExitStatus.Good,
            [sentence, .. warnings.Select(w => $"Warning: {w}")],
            new RecordedDocument(
                club.Id, name, request.Member, entries.Count, new SortedDictionary<string, int>(kinds, StringComparer.Ordinal),
                [.. warnings.Select(w => w.ToString())]));
    }
}
