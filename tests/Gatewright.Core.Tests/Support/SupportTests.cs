using Xunit.Sdk;

namespace Gatewright.Core.Tests.Support;

/// <summary>The helpers of these tests can fail.</summary>
public class SupportTests
{
    [Fact]
    public void Close_passes_up_to_its_tolerance() => Close.To(1, 1.5, 0.5);

    [Theory]
    [InlineData(1, 1.51)]
    [InlineData(1, 0.49)]
    [InlineData(1, double.NaN)]
    [InlineData(double.NaN, 1)]
    [InlineData(double.PositiveInfinity, 1)]
    public void Close_fails_beyond_its_tolerance(double expected, double actual) =>
        Assert.ThrowsAny<XunitException>(() => Close.To(expected, actual, 0.5));

    [Fact]
    public void Close_fails_on_lists_of_different_length() =>
        Assert.ThrowsAny<XunitException>(() => Close.To([1, 2], [1], 0.5));

    [Fact]
    public void Close_says_what_differs_by_how_much()
    {
        var failure = Assert.ThrowsAny<XunitException>(() => Close.To(1, 1.75, 0.5, "lean"));

        Assert.Equal("lean: expected 1, actual 1.75, difference 0.75, tolerance 0.5", failure.Message);
    }

    [Theory]
    [InlineData(2, 2, 15)]
    [InlineData(2, 2.0002, 4)]
    [InlineData(-2, -2.002, 3)]
    [InlineData(0, 0.001, 3)]
    [InlineData(2, 2.2, 1)]
    public void Digits_count_what_agrees(double certified, double computed, double digits) =>
        Close.To(digits, Digits.Agreed(certified, computed), 1e-6);

    [Theory]
    [InlineData(2, 2.0002)]
    [InlineData(2, double.NaN)]
    public void Digits_fail_when_fewer_agree(double certified, double computed) =>
        Assert.ThrowsAny<XunitException>(() => Digits.AtLeast(4.5, certified, computed, "value"));

    [Fact]
    public void A_table_that_is_not_there_is_an_error() =>
        Assert.Throws<ArgumentException>(() => Embedded.Table("no such table"));
}
