using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Exchange;

/// <summary>The words of the format, each with what it means.</summary>
internal static class Vocabulary
{
    /// <summary>In the column item: the row states the level of a rack and reads no gate.</summary>
    public const string Level = "level";

    public static string Classes { get; } = $"one of {string.Join(' ', BoatClass.All)}";

    public static WordTable<Side> Sides { get; } = new((Side.Port.Word(), Side.Port), (Side.Starboard.Word(), Side.Starboard));

    public static WordTable<ReadItem> Items { get; } = new(
        ("gate", ReadItem.Gate),
        ("pin-aft", ReadItem.PinAft),
        ("pin-out", ReadItem.PinOut),
        ("gate-pitch", ReadItem.GatePitch),
        ("sleeve", ReadItem.Sleeve));

    /// <summary>In the column item: the gate was mended on that day.</summary>
    public const string Mended = "mended";

    /// <summary>In the column item: what was told of a gate, or of the boat.</summary>
    public static WordTable<ReportKind> Told { get; } = new([.. ReportKinds.All.Select(kind => (kind.Code(), kind))]);

    /// <summary>In the column item: a measure of the rig.</summary>
    public static WordTable<RigMeasure> Measures { get; } = new([.. RigMeasures.All.Select(measure => (measure.Word(), measure))]);

    public static WordTable<RigUnit> Units { get; } = new([.. RigUnits.All.Select(unit => (unit.Word(), unit))]);

    public static WordTable<Station> Stations { get; } = new(
        (Station.Catch.Word(), Station.Catch),
        (Station.Abeam.Word(), Station.Abeam),
        (Station.Finish.Word(), Station.Finish));

    /// <summary>What says where a gate was read, in a sentence.</summary>
    public static string Points { get; } = $"{Stations.Choice}, or degrees from abeam";

    public static WordTable<Lie> Lies { get; } = new((Lie.Upright.Word(), Lie.Upright), (Lie.Inverted.Word(), Lie.Inverted));

    public static WordTable<LevelSource> Levels { get; } = new(
        ("bubble", LevelSource.Bubble),
        ("eye", LevelSource.Eye),
        ("rack", LevelSource.Rack));

    public static WordTable<Bedding> Beds { get; } = new(("firm", Bedding.Firm), ("soft", Bedding.Soft));
}
