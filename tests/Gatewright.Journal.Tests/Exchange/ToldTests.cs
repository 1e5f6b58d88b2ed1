using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Rows that hold no reading but what was told.</summary>
public sealed class ToldTests
{
    private const string Read = "Kestrel,4-,1,port,gate,catch,4.5,,,,,2026-05-04,";

    [Fact]
    public void What_was_told_stands_with_its_boat()
    {
        BoatRecord boat = Record(
            Read,
            "Kestrel,4-,1,port,Knock,,,,,,,2026-05-03,",
            "Kestrel,4-,,starboard,down to one side,,,,,,,,");

        Assert.Equal(
            [
                new Report(ReportKind.Knock, new GatePlace(1, Side.Port), null, new(2026, 5, 3)),
                new Report(ReportKind.DownToOneSide, null, Side.Starboard),
            ],
            boat.Reports);
        Assert.Single(boat.Current.Readings);
    }

    [Theory]
    [InlineData("2026-05-04", 1, 0)]
    [InlineData("2026-05-05", 0, 1)]
    [InlineData("", 1, 0)]
    public void Readings_from_before_a_mending_are_old(string mended, int current, int old)
    {
        BoatRecord boat = Record(Read, $"Kestrel,4-,1,port,mended,,,,,,,{mended},");

        Assert.Equal((current, old), (boat.Current.Readings.Count, boat.Old.Count));
    }

    [Fact]
    public void A_boat_that_was_only_told_of_is_named_and_is_no_boat_to_judge()
    {
        ReadingsInput input = Csv.Read(Csv.Rows(Read, "Merlin,2-,1,port,knock,,,,,,,,"));

        Assert.Equal(["Kestrel"], Csv.Boats(input).Select(b => b.Boat));
        Assert.Equal(["Merlin"], input.OnlyToldOf);
    }

    [Fact]
    public void A_note_beside_what_was_told_is_kept()
    {
        ReadingsInput input = Csv.Read(Csv.Rows(Read, "Kestrel,4-,1,port,knock,,,,,,,,hit the landing stage"));

        Assert.Equal(new ReadingNote("Kestrel", new(1, Side.Port), "hit the landing stage"), Assert.Single(input.Notes));
    }

    public static TheoryData<string, string> Faults => new()
    {
        {
            "Kestrel,4-,1,port,knock,catch,4,,,,,,",
            Csv.Messages(
                "round.csv, line 2, column at: 'catch' does not go with knock, which is told and not read: leave it blank, and give the reading a row of its own.",
                "round.csv, line 2, column reading: '4' does not go with knock, which is told and not read: leave it blank, and give the reading a row of its own.")
        },
        {
            "Kestrel,4-,1,port,down-to-one-side,,,,,,,,",
            "round.csv, line 2, column seat: '1' does not go with down-to-one-side, which is told of the whole boat: leave it blank."
        },
        {
            "Kestrel,4-,,port,mended,,,,,,,,",
            "round.csv, line 2, column seat: blank: expected the seat's number, 1 at the bow."
        },
        {
            "Kestrel,4-,1,,crab-early,,,,,,,5/4/2026,",
            Csv.Messages(
                "round.csv, line 2, column side: blank: expected port or starboard.",
                "round.csv, line 2, column date: '5/4/2026' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199. With slashes one cannot tell the day from the month.")
        },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void What_is_wrong_with_such_a_row_is_said_at_once(string row, string errors) =>
        Assert.Equal(errors, Csv.ErrorsOf(Csv.Rows(row)));

    [Fact]
    public void A_side_told_of_must_be_that_of_the_seats_readings() => Assert.Contains(
        "column side: 'starboard' disagrees with port in line 2",
        Csv.ErrorsOf(Csv.Rows(Read, "Kestrel,4-,1,starboard,knock,,,,,,,,")),
        StringComparison.Ordinal);

    private static BoatRecord Record(params string[] rows)
    {
        ReadingsInput input = Csv.Read(Csv.Rows(rows));
        Csv.Boats(input);
        return Assert.Single(input.Records);
    }
}
