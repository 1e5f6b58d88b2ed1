using Gatewright.Printing.Tests.World;
using Gatewright.Words;

namespace Gatewright.Printing.Tests.Pages;

/// <summary>What holds of every page of every document, in either language, as poppler sees it.</summary>
public class EveryPageTests
{
    private const int DotsAnInch = 60;

    /// <summary>Most printers reach to 5 mm; a dot at this resolution is 0.4.</summary>
    private const double PrinterReaches = 4.6;

    /// <summary>Boxes are as high as the font's lines, not as its letters: they touch where lines stand close.</summary>
    private const double Touching = 0.25;

    public static TheoryData<string, string> Documents => [.. from kind in Printed.Kinds from language in Language.All select (kind, language.Tag)];

    [Theory]
    [MemberData(nameof(Documents))]
    public void It_is_whole_legible_and_can_be_read_back(string kind, string tag)
    {
        using var pdf = new Poppler(Printed.Of(kind, Printed.Full, Language.Of(tag)));

        IReadOnlyList<Page> pages = pdf.Pages();
        Assert.NotEmpty(pages);
        Assert.All(pages, page => Assert.Equal((210, 297), ((int)Math.Round(page.Width), (int)Math.Round(page.Height))));
        Assert.All(pdf.Fonts(), font => Assert.True(font is { IsEmbedded: true, HasUnicode: true }, font.ToString()));
        Assert.Empty(pages.SelectMany(Outside));
        Assert.Empty(pages.SelectMany(Colliding));
        Assert.Empty(pages.SelectMany(page => page.Words).Where(word => word.Bottom - word.Top < 2.2).Select(word => word.Text));
        Assert.All(pdf.Pictures(DotsAnInch, $"{kind}-{tag}"), InsideThePrinter);
    }

    [Fact]
    public void A_word_on_another_is_seen()
    {
        var page = new Page(210, 297, [new("one", 10, 10, 20, 14), new("two", 19, 11, 30, 15), new("beside", 31, 11, 40, 15)]);
        Assert.Equal(["one / two"], Colliding(page));
        Assert.Equal(["out"], Outside(page with { Words = [new("out", 200, 10, 211, 14)] }));
    }

    private static IEnumerable<string> Outside(Page page) => page.Words
        .Where(w => w.Left < PrinterReaches || w.Top < PrinterReaches || w.Right > page.Width - PrinterReaches || w.Bottom > page.Height - PrinterReaches)
        .Select(w => w.Text);

    private static IEnumerable<string> Colliding(Page page)
    {
        Word[] words = [.. page.Words.OrderBy(w => w.Top)];
        for (int i = 0; i < words.Length; i++)
        {
            for (int j = i + 1; j < words.Length && words[j].Top < words[i].Bottom; j++)
            {
                (Word one, Word other) = (words[i], words[j]);

                // Letters reach over some three quarters of their font's line.
                double deep = 0.28 * Math.Min(one.Bottom - one.Top, other.Bottom - other.Top);
                if (one.Bottom - other.Top > deep + Touching && Math.Min(one.Right, other.Right) - Math.Max(one.Left, other.Left) > Touching)
                {
                    yield return $"{one.Text} / {other.Text}";
                }
            }
        }
    }

    private static void InsideThePrinter(GreyPicture page)
    {
        (int left, int top, int right, int bottom) = page.InkBox() ?? throw new InvalidOperationException("A page is blank.");
        double dot = 25.4 / DotsAnInch;
        Assert.InRange(left * dot, PrinterReaches, 105);
        Assert.InRange(top * dot, PrinterReaches, 148);
        Assert.InRange(right * dot, 20, 210 - PrinterReaches);
        Assert.InRange(bottom * dot, 5, 297 - PrinterReaches);
    }
}
