using System.Globalization;
using Gatewright.App.Frame;

namespace Gatewright.App.Tests.Keeping;

public class FiguresTests
{
    [Theory]
    [InlineData("4.5", "4.5")]
    [InlineData("4,5", "4.5")]
    [InlineData(" -0,5 ", "-0.5")]
    [InlineData("\u22120.5", "-0.5")]
    [InlineData("7", "7")]
    public void A_number_is_read_as_people_type_it_here_or_there(string typed, string value) =>
        Assert.Equal(decimal.Parse(value, CultureInfo.InvariantCulture), Figures.Read(typed));

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("four")]
    [InlineData("1,000.5")]
    [InlineData("1e3")]
    [InlineData("4.5.1")]
    public void What_is_no_number_is_none(string? typed) => Assert.Null(Figures.Read(typed));

    [Theory]
    [InlineData("12", 12)]
    [InlineData("0", 0)]
    [InlineData("-1", null)]
    [InlineData("1.5", null)]
    public void A_count_is_whole_and_not_below_nothing(string typed, int? count) => Assert.Equal(count, Figures.Count(typed));

    [Theory]
    [InlineData("en", "\u22120.5", "+1.25")]
    [InlineData("de", "\u22120,5", "+1,25")]
    public void Numbers_are_written_in_the_language_of_the_page(string language, string minus, string plus)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(language);
            Assert.Equal((minus, plus), (Figures.Text(-0.5m), Figures.WithSign(1.25m)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void What_is_recorded_has_a_point_in_every_language()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de");
            Assert.Equal("-0.25", Figures.Recorded(-0.25m));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>One place makes the app's sentences and figures: a second would come to differ.</summary>
    [Fact]
    public void Nobody_else_makes_sentences_or_a_minus()
    {
        string[] making = [.. Directory.EnumerateFiles(Look.Tokens.Path("src/Gatewright.App"), "*.*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".cs" or ".razor" && !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(file => File.ReadAllText(file) is var text && (text.Contains("Wording.In(", StringComparison.Ordinal) || text.Contains("Wording.OnScreen(", StringComparison.Ordinal) || text.Contains("\"\\u2212\"", StringComparison.Ordinal)))
            .Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

        Assert.Equal(["Figures.cs", "Said.cs"], making);
    }
}
