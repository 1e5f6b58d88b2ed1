using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>What there is to say about the cells of a row.</summary>
internal static class CellMessages
{
    private const string ADateInstead =
        "is a date that a spreadsheet made of a number: set the column to Text (or type the decimal sign the sheet expects) and type the number again, such as 4.5.";

    public static void Blank(this Reporter report, Column column, string expected) =>
        report.Error(column, default, $"blank: expected {expected}.");

    public static void NameTooLong(this Reporter report, Column column, ReadOnlySpan<char> value) => report.Error(
        column, value, $"is {value.Length} characters long: a name has at most {NameText.Longest}.");

    public static void NameHidden(this Reporter report, Column column, ReadOnlySpan<char> value) => report.Error(
        column, value, $"has characters in it that cannot be seen: type the name again.");

    public static void NoClass(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.Class, value, $"is not a class of boat: expected {Vocabulary.Classes}.");

    public static void ClassTurned(this Reporter report, ReadOnlySpan<char> value, BoatClass read) => report.WarnOnce(
        Column.Class.Name(), value, $"was read as {read}: a spreadsheet made a number of it. Set the column to Text before typing.");

    public static void OtherClass(this Reporter report, ReadOnlySpan<char> value, BoatRows boat) => report.Error(
        Column.Class, value, $"disagrees with {boat.Class} in {boat.ClassPlace.SeenFrom(report.Place)}: {boat.Name.AsSpan()} has one class. Correct the wrong one, or give the second boat a name of its own.");

    public static void NoSeat(this Reporter report, ReadOnlySpan<char> value, BoatClass? boat) => report.Error(
        Column.Seat, value, $"is not a seat of {boat?.Name ?? "any boat"}: expected {Seats(boat?.Seats ?? GateCells.MostSeats)}.");

    public static void NoSide(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.Side, value, $"is not a side: expected {Vocabulary.Sides.Choice}, as one sees them facing the bow.");

    public static void OtherSide(this Reporter report, GatePlace gate, BoatRows boat, RowPlace first) => report.Error(
        Column.Side, gate.Side.Word(), $"disagrees with {gate.Side.Opposite().Word()} in {first.SeenFrom(report.Place)}: a sweep seat has one gate, and seat {gate.Seat} of {boat.Name.AsSpan()} is rowed on one side. Correct the wrong one.");

    public static void NoItem(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.Item, value, $"is not an item: expected {string.Join(", ", Vocabulary.Items.Words)} or {Vocabulary.Level}; or what was told: {string.Join(", ", Vocabulary.Told.Words)} or {Vocabulary.Mended}; or a measure of the rig: {Vocabulary.Measures.Choice}; blank is gate.");

    public static void NotTold(this Reporter report, Column column, ReadOnlySpan<char> value, ReadOnlySpan<char> item) => report.Error(
        column, value, $"does not go with {item}, which is told and not read: leave it blank, and give the reading a row of its own.");

    public static void SeatOfTheBoat(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.Seat, value, $"does not go with {ReportKind.DownToOneSide.Code()}, which is told of the whole boat: leave it blank.");

    public static void NoPointColumn(this Reporter report) => report.Error(
        Column.At, default, $"not in the header, while this row reads a gate: add the column, with {Vocabulary.Points}.");

    public static void NoPoint(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.At, value, $"is not a point of the stroke: expected {Vocabulary.Points}, -90 to 90, plus towards the catch.");

    public static void PointOfOther(this Reporter report, ReadOnlySpan<char> value, ReadItem item) => report.Error(
        Column.At, value, $"does not go with {Vocabulary.Items.Word(item)}, which is read in one place: leave it blank, or write abeam.");

    public static void NoReading(this Reporter report, ReadOnlySpan<char> value)
    {
        if (SpreadsheetDate.IsMeantBy(value))
        {
            report.Error(Column.Reading, value, $"{ADateInstead}");
        }
        else
        {
            report.Error(Column.Reading, value, $"is not a number: expected degrees, such as 4.5.");
        }
    }

    public static void ReadingTooLarge(this Reporter report, ReadOnlySpan<char> value, double degrees, int most) => report.Error(
        Column.Reading, value, $"is not a possible reading: expected degrees from -{most} to {most}.{PointLeftOut(degrees, most)}");

    public static void TooManyCells(this Reporter report, ReadOnlySpan<char> value, int cells, int columns) => report.Error(
        null, value, $"stands beyond the last column: the row has {cells} cells, the header {columns}. If a number was written with a decimal comma between commas, write it with a point, or save the sheet with semicolons.");

    public static void SplitReading(this Reporter report, ReadOnlySpan<char> value, ReadOnlySpan<char> next) => report.Error(
        Column.Reading, value, $"is followed by {next} in the next cell, as if {value},{next} had been split at its decimal comma: write it with a point, or save the sheet with semicolons.");

    public static void MaybeSplitReading(this Reporter report, ReadOnlySpan<char> value, ReadOnlySpan<char> next) => report.WarnOnce(
        Column.Reading.Name(), value, $"is followed by {ShownText.Of(next)} in the next cell: if {ShownText.Of(value)},{ShownText.Of(next)} was meant, write it with a point, or save the sheet with semicolons.");

    public static void NotOfARack(this Reporter report, Column column, ReadOnlySpan<char> value) => report.Error(
        column, value, $"does not go with item level: such a row states how a rack lies, with rack, bow_high and port_low. Leave the cells of a reading blank, or correct the item.");

    public static void BedOfABoat(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.Bed, value, $"does not go with a reading: write it in the row with item level that states how the rack lies.");

    private static string Seats(int seats) =>
        seats == 1 ? "1" : string.Create(CultureInfo.InvariantCulture, $"a whole number from 1 (bow) to {seats}");

    private static string PointLeftOut(double degrees, int most) => degrees == Math.Floor(degrees) && Math.Abs(degrees) <= 10 * most
        ? string.Create(CultureInfo.InvariantCulture, $" If {degrees / 10:0.0} was meant, write it with its decimal point.")
        : "";
}
