using Gatewright.Core.Measuring;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Tests.Rounds;

public sealed class EnteringTests
{
    [Fact]
    public void The_pad_holds_every_half_degree_from_a_blade_that_dives_to_twice_what_is_asked()
    {
        ReadingPad pad = ReadingPad.For(ReadItem.Gate);

        Assert.Equal(24, pad.Values.Count);
        Assert.Equal((-2m, 9.5m), (pad.Values[0], pad.Values[^1]));
        Assert.All(pad.Values.Zip(pad.Values.Skip(1)), pair => Assert.Equal(0.5m, pair.Second - pair.First));
        Assert.Equal([-2m, 1m, 4m, 7m], pad.Values.Where((_, i) => i % ReadingPad.Columns == 0));
    }

    [Theory]
    [InlineData(ReadItem.PinAft)]
    [InlineData(ReadItem.PinOut)]
    [InlineData(ReadItem.Sleeve)]
    public void What_leans_either_way_has_as_much_of_each(ReadItem item)
    {
        IReadOnlyList<decimal> values = ReadingPad.For(item).Values;
        Assert.Equal((-6m, 5.5m), (values[0], values[^1]));
    }

    [Theory]
    [InlineData(4.3, 4.5)]
    [InlineData(4.25, 4.5)]
    [InlineData(4.2, 4.0)]
    [InlineData(-0.25, -0.5)]
    [InlineData(-0.2, 0.0)]
    [InlineData(12.0, null)]
    [InlineData(null, null)]
    public void The_last_value_is_marked_where_it_nearly_is(double? last, double? marked) =>
        Assert.Equal((decimal?)marked, ReadingPad.For(ReadItem.Gate).Nearest((decimal?)last));

    [Theory]
    [InlineData("4.3", 4.3)]
    [InlineData("4,3", 4.3)]
    [InlineData(" -0,5 ", -0.5)]
    [InlineData("\u22120.5", -0.5)]
    [InlineData("4.25°", 4.25)]
    [InlineData(".5", 0.5)]
    [InlineData("5,", 5.0)]
    [InlineData("4.325", null)]
    [InlineData("1.000,5", null)]
    [InlineData("four", null)]
    [InlineData("-", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    public void Tenths_are_typed_with_a_comma_or_a_point(string? typed, double? value) =>
        Assert.Equal((decimal?)value, TypedDegrees.Parse(typed));

    [Theory]
    [InlineData(4, null, false)]
    [InlineData(15, null, false)]
    [InlineData(15.1, null, true)]
    [InlineData(-15.5, -15.5, true)]
    [InlineData(8.0, 4.0, false)]
    [InlineData(8.1, 4.0, true)]
    [InlineData(-0.5, 4.0, true)]
    public void A_value_far_off_is_asked_about(double value, double? last, bool asked) =>
        Assert.Equal(asked, Slip.May((decimal)value, (decimal?)last));

    [Theory]
    [InlineData(-1.5, -1.5, true)]
    [InlineData(-1.5, -0.5, true)]
    [InlineData(-1.5, -2.6, false)]
    [InlineData(-1.5, 4.0, false)]
    public void A_value_that_was_asked_about_is_found_again_within_two_steps_of_the_pad(double asked, double again, bool found) =>
        Assert.Equal(found, Slip.IsFoundAgain((decimal)asked, (decimal)again));
}
