using FsCheck.Xunit;
using Gatewright.Cli.Drawing;

namespace Gatewright.Cli.Tests.Drawing;

public sealed class WordWrapTests
{
    [Fact]
    public void A_number_and_its_sign_stay_together() =>
        Assert.Equal(["it reads", "3.0° ± 0.4", "at 92 %"], WordWrap.Lines("it reads 3.0° ± 0.4 at 92 %", 12));

    [Fact]
    public void A_word_that_is_too_long_is_broken() =>
        Assert.Equal(["abcd", "efgh", "i jk"], WordWrap.Lines("abcdefghi jk", 4));

    /// <summary>Law: nothing is lost but the blanks at which a line was broken, and no line is too long.</summary>
    [Property]
    public void Lines_put_together_are_the_text(string[] words, byte extra)
    {
        int width = 10 + (extra % 60);
        string text = string.Join(' ', (words ?? []).Select(w => CellText.Tame(w ?? string.Empty)));
        string[] lines = [.. WordWrap.Lines(text, width)];
        Assert.Equal(WithoutBlanks(text), WithoutBlanks(string.Concat(lines)));
        Assert.All(lines, line => Assert.True(CellText.Width(line) <= width, line));
    }

    private static string WithoutBlanks(string text) => text.Replace(" ", string.Empty, StringComparison.Ordinal);
}
