using Gatewright.Cli.Drawing;

namespace Gatewright.Cli.Tests.Drawing;

public sealed class CellTextTests
{
    [Theory]
    [InlineData("", 0)]
    [InlineData("Heron", 5)]
    [InlineData("4.0° ± 0.4", 10)]
    [InlineData("●───┤", 5)]
    [InlineData("e\u0301", 1)]
    [InlineData("漕艇", 4)]
    [InlineData("🦢", 2)]
    [InlineData("👩\u200D🚀", 2)]
    public void A_text_takes_as_many_columns_as_a_terminal_gives_it(string text, int columns) =>
        Assert.Equal(columns, CellText.Width(text));

    [Theory]
    [InlineData("Heron", 5, "Heron")]
    [InlineData("Heron", 4, "Her…")]
    [InlineData("漕艇部", 4, "漕…")]
    [InlineData("e\u0301e\u0301e\u0301", 2, "e\u0301…")]
    public void What_does_not_fit_ends_in_an_ellipsis(string text, int columns, string fitted) =>
        Assert.Equal(fitted, CellText.Fit(text, columns));

    [Theory]
    [InlineData("Heron", "Heron")]
    [InlineData("Æger 漕", "Æger 漕")]
    [InlineData("a\eb\tc\nd", "a\uFFFDb\uFFFDc\uFFFDd")]
    [InlineData("a\u202Eb", "a\uFFFDb")]
    public void Control_characters_are_shown_and_do_nothing(string text, string tame) =>
        Assert.Equal(tame, CellText.Tame(text));
}
