using Gatewright.Core.Oars;

namespace Gatewright.Journal.Exchange.OarsFiles;

/// <summary>The format of oars as CSV: what its columns are called, and what they take.</summary>
public static class OarsFormat
{
    internal static WordTable<OarLaid> Laid { get; } = new(
        (OarLaid.HandleOut.Word(), OarLaid.HandleOut), (OarLaid.Across.Word(), OarLaid.Across));

    internal static WordTable<LevelSource> Levels { get; } = new(("bubble", LevelSource.Bubble), ("eye", LevelSource.Eye));

    /// <summary>The columns, in the order in which people think of them.</summary>
    public static IReadOnlyList<ReadingsColumn> Columns { get; } =
    [
        new("oar", true, []),
        new("set", false, []),
        new("side", false, Vocabulary.Sides.Words),
        new("blade", false, []),
        new("boat", false, []),
        new("seat", false, []),
        new("length", false, []),
        new("inboard", false, []),
        new("weight", false, []),
        new("sleeve", false, []),
        new("laid", false, Laid.Words),
        new("lie", false, Vocabulary.Lies.Words),
        new("bow_high", false, Levels.Words),
        new("gauge", false, []),
        new("date", false, []),
        new("note", false, []),
    ];

    internal const int Oar = 0;
    internal const int Set = 1;
    internal const int Side = 2;
    internal const int Blade = 3;
    internal const int Boat = 4;
    internal const int Seat = 5;
    internal const int Length = 6;
    internal const int Inboard = 7;
    internal const int Weight = 8;
    internal const int Sleeve = 9;
    internal const int LaidWay = 10;
    internal const int Lie = 11;
    internal const int BowHigh = 12;
    internal const int Gauge = 13;
    internal const int Date = 14;

    internal static TableFormat Table { get; } = new("oars", "each oar, or each reading of one", Columns);
}
