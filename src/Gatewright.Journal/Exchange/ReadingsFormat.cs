using Gatewright.Core;

namespace Gatewright.Journal.Exchange;

/// <summary>The format of readings as CSV: what its columns are called and which words they take.</summary>
public static class ReadingsFormat
{
    /// <summary>The columns, in the order in which they are written.</summary>
    public static IReadOnlyList<ReadingsColumn> Columns { get; } =
    [
        new("boat", true, []),
        new("class", true, [.. BoatClass.All.Select(c => c.Name)]),
        new("seat", true, []),
        new("side", true, Vocabulary.Sides.Words),
        new("item", false, [.. Vocabulary.Items.Words, Vocabulary.Level, .. Vocabulary.Told.Words, Vocabulary.Mended, .. Vocabulary.Measures.Words]),
        new("at", false, Vocabulary.Stations.Words),
        new("reading", true, []),
        new("lie", false, Vocabulary.Lies.Words),
        new("bow_high", false, Vocabulary.Levels.Words),
        new("port_low", false, Vocabulary.Levels.Words),
        new("gauge", false, []),
        new("date", false, []),
        new("note", false, []),
        new("rack", false, []),
        new("bed", false, Vocabulary.Beds.Words),
        new("unit", false, Vocabulary.Units.Words),
        new("lying", false, []),
    ];

    /// <summary>Degrees either way that a gate's working face may read.</summary>
    public static int MostOfAGate => 30;

    /// <summary>Degrees either way that a pin, a sleeve or a gate pitch may read.</summary>
    public static int MostOfAnother => 45;

    /// <summary>Degrees either way that a boat or a rack may lie off level.</summary>
    public static int MostOfALevel => 30;

    /// <summary>The name a gauge has when its column is blank.</summary>
    public static string UnnamedGauge => Core.Measuring.Gauge.Unnamed;
}
