using Gatewright.Core.Rig;
using Gatewright.Journal.Rigging;

namespace Gatewright.Journal.Tests.Rigging;

public class RigPadTests
{
    [Theory]
    [InlineData(RigMeasure.Spread, RigUnit.Centimetres, 84.0, 78, 89.5)]
    [InlineData(RigMeasure.StretcherAngle, RigUnit.Degrees, 42.0, 30, 53)]
    [InlineData(RigMeasure.Spread, RigUnit.Inches, 83.82, 30, 35.75)]
    public void A_pad_has_its_target_at_the_start_of_its_third_row(RigMeasure measure, RigUnit unit, double target, double lowest, double highest)
    {
        var pad = RigPad.For(measure, unit, target, null);

        Assert.Equal((decimal)lowest, pad.Values[0]);
        Assert.Equal((decimal)highest, pad.Values[^1]);
        Assert.Equal(24, pad.Values.Count);
    }

    /// <remarks>86.4 cm is 864 mm; the nearest whole step is 865, twelve steps down from it is 805.</remarks>
    [Fact]
    public void In_millimetres_a_pad_has_the_figure_that_it_calls_nearest()
    {
        var pad = RigPad.For(RigMeasure.Spread, RigUnit.Millimetres, 86.4, null);

        Assert.Equal((805, 920), (pad.Values[0], pad.Values[^1]));
        Assert.Contains(pad.Nearest(86.4)!.Value, pad.Values);
    }

    [Fact]
    public void A_pad_stays_where_it_is_while_the_last_figure_is_on_it()
    {
        Assert.Equal(78, RigPad.For(RigMeasure.Spread, RigUnit.Centimetres, 84, 78).Lowest);
        Assert.Equal(78, RigPad.For(RigMeasure.Spread, RigUnit.Centimetres, 84, 89.5).Lowest);
    }

    [Theory]
    [InlineData(77.0)]
    [InlineData(90.5)]
    public void A_pad_goes_to_the_last_figure_that_lies_off_it(double last)
    {
        var pad = RigPad.For(RigMeasure.Spread, RigUnit.Centimetres, 84, last);

        Assert.NotNull(pad.Nearest(last));
    }

    [Fact]
    public void Without_a_target_and_a_figure_a_pad_lies_in_the_middle_of_what_can_be_meant() =>
        Assert.Contains(45m, RigPad.For(RigMeasure.TrackPosition, RigUnit.Centimetres, null, null).Values);

    [Theory]
    [InlineData("86.3", 86.3)]
    [InlineData("86,3", 86.3)]
    [InlineData(" 86 ", 86.0)]
    [InlineData("863", null)]
    [InlineData("86.345", null)]
    [InlineData("", null)]
    [InlineData("a", null)]
    public void What_is_typed_is_a_figure_only_where_it_can_be_one(string text, double? expected) =>
        Assert.Equal((decimal?)expected, TypedMeasure.Parse(text, RigMeasure.Spread, RigUnit.Centimetres));

    [Fact]
    public void A_minus_of_any_kind_is_read() =>
        Assert.Equal([-3.5m, -3.5m, -3.5m], new[] { "-3.5", "\u22123,5", "\u20133.5" }.Select(t => TypedMeasure.Parse(t, RigMeasure.Overlap, RigUnit.Centimetres)!.Value));

    [Fact]
    public void Inches_are_bound_by_the_same_lengths() =>
        Assert.Equal([34m, null], new[] { "34", "86" }.Select(t => TypedMeasure.Parse(t, RigMeasure.Spread, RigUnit.Inches)));
}
