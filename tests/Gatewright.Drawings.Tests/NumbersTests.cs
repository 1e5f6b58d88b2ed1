using System.Globalization;

namespace Gatewright.Drawings.Tests;

public class NumbersTests
{
    private static readonly DrawingLabels German = new() { Culture = CultureInfo.GetCultureInfo("de-DE") };

    [Theory]
    [InlineData(4, 1, "4,0°")]
    [InlineData(-0.5, 1, "−0,5°")]
    [InlineData(-0.04, 1, "0,0°")]
    [InlineData(2.25, 1, "2,3°")]
    [InlineData(-12, 0, "−12°")]
    public void People_read_degrees_as_their_language_writes_them(double degrees, int decimals, string expected) =>
        Assert.Equal(expected, German.Degrees(degrees, decimals));

    [Fact]
    public void Without_a_language_numbers_have_a_point() => Assert.Equal("4.0°", DrawingLabels.None.Degrees(4));
}
