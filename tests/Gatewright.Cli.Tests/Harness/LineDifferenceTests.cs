namespace Gatewright.Cli.Tests.Harness;

/// <summary>The helper that compares is itself compared with what it should say.</summary>
public sealed class LineDifferenceTests
{
    [Fact]
    public void Equal_texts_have_no_difference() =>
        Assert.Null(LineDifference.Between("a\nb\n", "a\nb\n"));

    [Fact]
    public void A_changed_line_is_shown_as_taken_away_and_as_new() =>
        Assert.Equal("   2 - b\n   2 + c\n", LineDifference.Between("a\nb\nd", "a\nc\nd"));

    [Fact]
    public void A_missing_line_end_is_a_difference() =>
        Assert.NotNull(LineDifference.Between("a\n", "a"));

    [Fact]
    public void A_blank_at_the_end_of_a_line_is_a_difference() =>
        Assert.NotNull(LineDifference.Between("a ", "a"));
}
