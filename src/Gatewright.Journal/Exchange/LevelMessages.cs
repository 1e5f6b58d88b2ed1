using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>What there is to say about how a boat lay, and about racks.</summary>
internal static class LevelMessages
{
    /// <summary>The most levels that one message lists.</summary>
    private const int MostListed = 5;

    public static void NoLie(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.Lie, value, $"is not a lie: expected {Vocabulary.Lies.Choice}; blank is upright.");

    public static void NoLevel(this Reporter report, Column column, ReadOnlySpan<char> value)
    {
        string date = SpreadsheetDate.IsMeantBy(value)
            ? "a date that a spreadsheet made of a number: set the column to Text and type it again. Expected "
            : "not a level: expected ";
        report.Error(column, value, $"is {date}degrees, such as 0.3, or bubble for a centred bubble; both columns blank is by eye.");
    }

    public static void LevelTooLarge(this Reporter report, Column column, ReadOnlySpan<char> value) => report.Error(
        column, value, $"is not a possible level: expected degrees from -{ReadingsFormat.MostOfALevel} to {ReadingsFormat.MostOfALevel}.");

    public static void HalfLevel(this Reporter report, Column blank, Column given) => report.Error(
        blank, default, $"blank, while {given.Name()} is given: write both (0 where it lies level), or neither for by eye.");

    public static void TwoLevels(this Reporter report, ReadOnlySpan<char> portLow, ReadOnlySpan<char> bowHigh) => report.Error(
        Column.PortLow, portLow, $"does not go with '{bowHigh}' in bow_high: expected two numbers, or one of {Vocabulary.Levels.Choice} in either or both.");

    public static void LevelOfNoRack(this Reporter report, Column column) => report.Error(
        column, Vocabulary.Levels.Word(LevelSource.Rack), $"says that the boat lies as its rack does: name it in the column rack.");

    public static void NoDate(this Reporter report, ReadOnlySpan<char> value)
    {
        string hint = value.Contains('/') ? " With slashes one cannot tell the day from the month." : "";
        report.Error(Column.Date, value, $"is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199.{hint}");
    }

    public static void NoBed(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.Bed, value, $"is not a bed: expected {Vocabulary.Beds.Choice}; blank is firm.");

    public static void NoRackLevel(this Reporter report, Column column, ReadOnlySpan<char> value) => report.Error(
        column, value, $"is not how a rack lies: expected degrees, such as 0.3, in both bow_high and port_low.");

    public static void RackTwice(this Reporter report, Rack rack, Rack before, RowPlace place) => report.Error(
        Column.Rack, rack.Name, $"was given another level in {place.SeenFrom(report.Place)} ({Of(before)}){On(rack.ReadOn)}: keep the row that holds, or give each the date on which it was read.");

    public static void RackUnknown(this Reporter report, RackRows rack) => report.Error(
        Column.Rack, rack.Name, $"has no level in any row: add a row with item level, this rack, its bow_high and port_low; or write how the boat itself lay; or leave rack blank for by eye.");

    public static void Ambiguous(this Reporter report, BoatRows boat, Lying lying, IReadOnlyCollection<HullLevel> levels)
    {
        report.Error(Column.BowHigh, default, $"blank, while other rows of {boat.Name.AsSpan()}, {lying.Key.Lie.Word()}{On(lying.Key.Date)}, give different levels ({Listed(levels)}): write the one that holds in this row too, or {Vocabulary.Levels.Word(LevelSource.Eye)} if none does.");
    }

    private static string Listed(IReadOnlyCollection<HullLevel> levels) =>
        string.Join("; ", levels.Take(MostListed).Select(Of)) + (levels.Count > MostListed ? "; ..." : "");

    private static string Of(HullLevel level) => level switch
    {
        HullLevel.Read read => Of(read.Attitude),
        HullLevel.BubbleCentred => Vocabulary.Levels.Word(LevelSource.Bubble),
        HullLevel.OfRack { Rack: var rack } => $"rack {ShownText.Of(rack.Name)}",
        _ => Vocabulary.Levels.Word(LevelSource.Eye),
    };

    private static string Of(Rack rack) => $"{Of(rack.Attitude)}, {Vocabulary.Beds.Word(rack.Bedding)}";

    private static string Of(HullAttitude attitude) => string.Create(
        CultureInfo.InvariantCulture, $"bow_high {attitude.BowHigh.Degrees} port_low {attitude.PortLow.Degrees}");

    private static string On(DateOnly? date) =>
        date is DateOnly day ? day.ToString("' on 'yyyy-MM-dd", CultureInfo.InvariantCulture) : "";
}
