using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Which rows are one lying, and what each says of the level.</summary>
public sealed class LyingTests
{
    private static readonly HullLevel s_read = new HullLevel.Read(HullAttitude.FromDegrees(0.3, -0.1));

    [Fact]
    public void A_level_given_in_one_row_holds_for_the_others_of_the_lying() => Assert.All(
        Lies("1,port,gate,catch,4.5,,,,,,", "2,starboard,gate,catch,4.5,,0.3,-0.1,,,", "3,port,gate,catch,4.5,,,,,,"),
        lie => Assert.Equal(s_read, lie.Level));

    [Fact]
    public void It_does_not_hold_for_another_lie() => Assert.Equal(
        [s_read, new HullLevel.ByEye()],
        Lies("1,port,gate,catch,4.5,inverted,0.3,-0.1,,,", "1,port,gate,catch,4.5,upright,,,,,").Select(l => l.Level));

    [Fact]
    public void It_does_not_hold_for_another_day()
    {
        BoatLie[] lies = Lies("1,port,gate,catch,4.5,,0.3,-0.1,,2026-05-04,", "1,port,gate,catch,4.5,,,,,2026-05-05,", "1,port,gate,catch,4.5,,,,,,");
        Assert.Equal([s_read, new HullLevel.ByEye(), new HullLevel.ByEye()], lies.Select(l => l.Level));
        Assert.Equal([new DateOnly(2026, 5, 4), new DateOnly(2026, 5, 5), null], lies.Select(l => l.Date));
    }

    [Fact]
    public void Two_levels_are_two_lyings() => Assert.Equal(
        [s_read, new HullLevel.BubbleCentred()],
        Lies("1,port,gate,catch,4.5,,0.3,-0.1,,,", "1,port,gate,catch,4.5,,bubble,,,,").Select(l => l.Level));

    [Theory]
    [InlineData("bubble", "")]
    [InlineData("", "bubble")]
    [InlineData("Bubble", "BUBBLE")]
    public void A_centred_bubble_may_stand_in_either_column(string bowHigh, string portLow) => Assert.Equal(
        new HullLevel.BubbleCentred(), Assert.Single(Lies($"1,port,gate,catch,4.5,,{bowHigh},{portLow},,,")).Level);

    [Fact]
    public void By_eye_can_be_said_where_other_rows_say_otherwise() => Assert.Equal(
        [s_read, new HullLevel.ByEye()],
        Lies("1,port,gate,catch,4.5,,0.3,-0.1,,,", "1,port,gate,finish,2.5,,eye,eye,,,").Select(l => l.Level));

    [Fact]
    public void By_eye_that_is_said_holds_for_blank_rows_too() => Assert.All(
        Lies("1,port,gate,catch,4.5,,eye,,,,", "2,starboard,gate,catch,4.5,,,,,,"),
        lie => Assert.Equal(new HullLevel.ByEye(), lie.Level));

    [Fact]
    public void Rows_of_one_lying_share_one_object()
    {
        BoatLie[] lies = Lies("1,port,gate,catch,4.5,,,,,,", "2,starboard,gate,catch,4.5,,0.3,-0.1,,,", "3,port,gate,catch,4.5,,0.30,-0.10,,,");
        Assert.All(lies, lie => Assert.Same(lies[0], lie));
    }

    [Fact]
    public void Level_both_ways_is_a_level_that_was_read() => Assert.Equal(
        new HullLevel.Read(HullAttitude.Level), Assert.Single(Lies("1,port,gate,catch,4.5,,0,-0.0,,,")).Level);

    [Fact]
    public void A_boat_that_was_moved_and_lies_alike_lies_anew()
    {
        BoatLie[] lies = Marked(",Kestrel,4-,1,port,catch,4.5", "Second place,Kestrel,4-,1,port,catch,4.5", "second  place,Kestrel,4-,1,port,catch,4.5", "3,Kestrel,4-,1,port,catch,4.5");

        Assert.Equal([true, false, true, false], [lies[0].Moved is null, lies[0] == lies[1], lies[1] == lies[2], lies[2] == lies[3]]);
        Assert.Single(lies.Select(l => l with { Moved = null }).Distinct());
    }

    [Fact]
    public void What_rows_say_of_a_level_does_not_outlast_a_move() => Assert.Equal(
        [s_read, s_read, new HullLevel.ByEye()],
        Csv.BoatsOf(Csv.Lines("boat,class,seat,side,at,reading,bow_high,port_low,lying", "Kestrel,4-,1,port,catch,4.5,0.3,-0.1,", "Kestrel,4-,1,port,catch,4.5,,,", "Kestrel,4-,1,port,catch,4.5,,,2"))
            .SelectMany(b => b.Readings).Select(r => r.Lie.Level));

    [Fact]
    public void A_measure_of_the_rig_has_no_lying() => Assert.Equal(
        "round.csv, line 2, column lying: '2' does not go with spread, which is measured with no gauge at a gate: leave it blank. If a decimal comma was split, write the number with a point.",
        Csv.ErrorsOf(Csv.Lines("boat,class,seat,side,item,lying,reading", "Kestrel,4-,1,,spread,2,84.5")));

    private static BoatLie[] Marked(params string[] rows) =>
        [.. Assert.Single(Csv.BoatsOf(Csv.Lines(["lying,boat,class,seat,side,at,reading", .. rows]))).Readings.Select(r => r.Lie)];

    /// <summary>The lyings of one boat's readings, row for row.</summary>
    private static BoatLie[] Lies(params string[] rows) =>
        [.. Assert.Single(Csv.BoatsOf(Csv.Rows([.. rows.Select(r => "Kestrel,4-," + r)]))).Readings.Select(r => r.Lie)];
}
