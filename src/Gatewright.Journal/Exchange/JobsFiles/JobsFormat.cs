using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>The format of finished jobs as CSV: what its columns are called, and what they take.</summary>
public static class JobsFormat
{
    internal const int Boat = 0;
    internal const int Class = 1;
    internal const int Seat = 2;
    internal const int Side = 3;
    internal const int Checked = 4;
    internal const int Gauge = 5;
    internal const int Found = 6;
    internal const int Date = 7;

    /// <summary>A gauge that nobody named: the only one.</summary>
    internal const string OnlyGauge = "gauge";

    /// <summary>What can be found, the word for nothing first.</summary>
    public static IReadOnlyList<string> FoundWords { get; } = [Causes.NoneCode, .. Causes.All.Select(cause => cause.Code())];

    internal static WordTable<CheckedKind> Kinds { get; } = new(
        ("gate", CheckedKind.Gate), ("oar", CheckedKind.Oar), ("level", CheckedKind.Level), ("gauge", CheckedKind.Gauge));

    internal static WordTable<Cause> FoundCauses { get; } = new([.. Causes.All.Select(cause => (cause.Code(), cause))]);

    /// <summary>The columns, in the order in which people think of them.</summary>
    public static IReadOnlyList<ReadingsColumn> Columns { get; } =
    [
        new("boat", true, []),
        new("class", false, [.. Core.BoatClass.All.Select(c => c.Name)]),
        new("seat", false, []),
        new("side", false, Vocabulary.Sides.Words),
        new("checked", false, Kinds.Words),
        new("gauge", false, []),
        new("found", true, FoundWords),
        new("date", true, []),
        new("note", false, []),
    ];

    /// <summary>The causes of a text: one, or several of a gate with a plus between; null where one is none, or stands there twice.</summary>
    internal static IReadOnlyList<Cause>? CausesOf(ReadOnlySpan<char> text)
    {
        var found = new List<Cause>();
        foreach (Range part in text.Split('+'))
        {
            if (FoundCauses.Find(text[part].Trim()) is not { } cause || found.Contains(cause))
            {
                return null;
            }

            found.Add(cause);
        }

        return found;
    }

    internal static TableFormat Table { get; } = new("jobs", "each gate, oar, level or gauge that was checked", Columns);
}
