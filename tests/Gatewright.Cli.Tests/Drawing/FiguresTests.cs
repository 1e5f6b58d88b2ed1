using Gatewright.Cli.Drawing;

namespace Gatewright.Cli.Tests.Drawing;

public sealed class FiguresTests
{
    [Theory]
    [InlineData(4, "4.0")]
    [InlineData(-0.04, "0.0")]
    [InlineData(-0.06, "-0.1")]
    [InlineData(2.25, "2.3")]
    [InlineData(12.34, "12.3")]
    public void Degrees_have_one_decimal_and_no_negative_nought(double degrees, string shown) =>
        Assert.Equal(shown, Figures.Degrees(degrees));

    [Theory]
    [InlineData(0, "under 1 %")]
    [InlineData(0.0099, "under 1 %")]
    [InlineData(0.01, "1 %")]
    [InlineData(0.5, "50 %")]
    [InlineData(0.99, "99 %")]
    [InlineData(0.9901, "over 99 %")]
    [InlineData(1, "over 99 %")]
    public void A_probability_is_never_told_as_a_certainty(double probability, string shown) =>
        Assert.Equal(shown, Figures.Percent(probability));
}
