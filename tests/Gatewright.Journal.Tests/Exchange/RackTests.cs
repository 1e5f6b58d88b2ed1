using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Racks whose level was read once, and the boats on them.</summary>
public sealed class RackTests
{
    private const string Level = ",,,,level,,,,0.3,-0.1,,2026-04-01,,A2,";

    private static readonly Rack s_a2 = new("A2", HullAttitude.FromDegrees(0.3, -0.1), Bedding.Firm, new DateOnly(2026, 4, 1));

    [Fact]
    public void A_boat_that_names_its_rack_lies_as_the_rack_does() => Assert.Equal(
        new HullLevel.OfRack(s_a2), Assert.Single(Levels(Level, Row("", "", "A2"))));

    [Fact]
    public void The_rack_may_be_stated_after_the_boat_and_is_called_as_it_is_first_met() => Assert.Equal(
        new HullLevel.OfRack(s_a2 with { Name = "a 2" }), Assert.Single(Levels(Row("", "", " a 2 "), Level)));

    [Fact]
    public void The_rack_may_be_stated_in_a_file_of_its_own()
    {
        string racks = Csv.Lines("item,rack,bow_high,port_low,bed,date", "level,B1,0,0.2,soft,", "level,A2,0.3,-0.1,firm,2026-04-01");
        IReadOnlyList<BoatReadings> boats = Csv.BoatsOf(racks, Csv.RackRows(Row("", "", "A2"), Row("", "", "B1", day: "2026-05-05")));
        Assert.Equal(
            [new HullLevel.OfRack(s_a2), new HullLevel.OfRack(new("B1", HullAttitude.FromDegrees(0, 0.2), Bedding.Soft))],
            Assert.Single(boats).Readings.Select(r => r.Lie.Level));
    }

    [Fact]
    public void What_was_read_on_the_boat_comes_before_its_rack() => Assert.Equal(
        [new HullLevel.Read(HullAttitude.FromDegrees(1, 1)), new HullLevel.Read(HullAttitude.FromDegrees(1, 1))],
        Levels(Level, Row("1", "1", "A2"), Row("", "", "A2")));

    [Fact]
    public void A_level_read_on_one_rack_does_not_follow_the_boat_to_another() => Assert.Equal(
        [new HullLevel.Read(HullAttitude.FromDegrees(1, 1)), new HullLevel.OfRack(s_a2)],
        Levels(Level, Row("1", "1", "B1"), Row("", "", "A2")));

    [Fact]
    public void As_the_rack_lies_can_be_said_where_other_rows_say_otherwise() => Assert.Equal(
        [new HullLevel.Read(HullAttitude.FromDegrees(1, 1)), new HullLevel.OfRack(s_a2)],
        Levels(Level, Row("1", "1", ""), Row("rack", "rack", "A2")));

    [Fact]
    public void A_row_without_a_rack_belongs_to_the_lying_that_has_one() => Assert.Equal(
        [new HullLevel.OfRack(s_a2), new HullLevel.OfRack(s_a2)],
        Levels(Level, Row("", "", "A2"), Row("", "", "")));

    [Fact]
    public void A_rack_need_not_have_a_level_where_the_boat_has_one() => Assert.Equal(
        new HullLevel.BubbleCentred(), Assert.Single(Levels(Row("bubble", "", "C9"))));

    [Fact]
    public void The_same_level_stated_twice_is_one() => Assert.Equal(
        new HullLevel.OfRack(s_a2), Assert.Single(Levels(Level, Level, Row("", "", "A2"))));

    [Theory]
    [InlineData("2026-04-30", 1)]
    [InlineData("2026-05-01", 2)]
    [InlineData("2026-06-01", 2)]
    [InlineData("2026-03-31", 1)]
    [InlineData("", 2)]
    public void A_rack_that_was_read_again_counts_as_it_was_read_last_by_the_boats_day(string day, double bowHigh)
    {
        var level = Assert.IsType<HullLevel.OfRack>(Assert.Single(Levels(
            ",,,,level,,,,2,0,,2026-05-01,,A2,", ",,,,level,,,,1,0,,2026-04-01,,A2,", Row("", "", "A2", day))));
        Assert.Equal(bowHigh, level.Rack.Attitude.BowHigh.Degrees);
    }

    [Fact]
    public void A_level_without_a_date_counts_as_the_oldest()
    {
        var level = Assert.IsType<HullLevel.OfRack>(Assert.Single(Levels(
            ",,,,level,,,,2,0,,2026-05-01,,A2,", ",,,,level,,,,1,0,,,,A2,", Row("", "", "A2", "2026-04-30"))));
        Assert.Equal(1, level.Rack.Attitude.BowHigh.Degrees);
    }

    [Fact]
    public void A_note_on_a_racks_level_says_which_rack() => Assert.Equal(
        [new ReadingNote(null, null, "bow to the doors", "A2")],
        Csv.Read(Csv.RackRows(",,,,level,,,,0.3,-0.1,,,bow to the doors,A2,", Row("", "", "A2"))).Notes);

    private static string Row(string bowHigh, string portLow, string rack, string day = "2026-05-04") =>
        $"Kestrel,4-,1,port,gate,catch,4.5,inverted,{bowHigh},{portLow},,{day},,{rack},";

    /// <summary>How the boat lay, reading for reading.</summary>
    private static IEnumerable<HullLevel> Levels(params string[] rows) =>
        Assert.Single(Csv.BoatsOf(Csv.RackRows(rows))).Readings.Select(r => r.Lie.Level);
}
