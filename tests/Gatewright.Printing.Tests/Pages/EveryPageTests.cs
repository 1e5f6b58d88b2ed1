using Gatewright.Printing.Paper;
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

    [Theory]
    [InlineData("sheet")]
    [InlineData("shed")]
    [InlineData("job")]
    [InlineData("round")]
    public void Nothing_on_a_sheet_stands_in_its_margin(string kind)
    {
        foreach (Language language in Language.All)
        {
            using var pdf = new Poppler(Printed.Of(kind, Printed.Full, language));
            Assert.Empty(pdf.Pages().SelectMany(p => p.Words).Where(w => w.Left < Frame.Left - Touching || w.Right > Frame.Right + Touching).Select(w => w.Text));
        }
    }

    /// <remarks>
    /// A word's box is as high as its font's line: with the text of 9 points, the head of every page, for measure. Cards and labels have
    /// little room.
    /// </remarks>
    [Theory]
    [InlineData("sheet")]
    [InlineData("shed")]
    [InlineData("job")]
    [InlineData("round")]
    public void Nothing_on_a_sheet_is_smaller_than_9_points(string kind)
    {
        Assert.True(Lettering.Note.Points >= 9, $"{Lettering.Note.Points} points");
        foreach (Language language in Language.All)
        {
            using var pdf = new Poppler(Printed.Of(kind, Printed.Full, language));
            Assert.All(pdf.Pages(), page =>
            {
                Word head = page.Words.First(w => w.Text == "Mill" && w.Top < 20);
                Assert.Empty(page.Words.Where(w => w.Bottom - w.Top < head.Bottom - head.Top - 0.01).Select(w => w.Text));
            });
        }
    }

    /// <summary>A hyphen is half as wide, and is overlooked: of what is worked out no figure has one for its sign.</summary>
    [Theory]
    [MemberData(nameof(Documents))]
    public void A_minus_is_a_true_one(string kind, string tag)
    {
        using var pdf = new Poppler(Printed.Of(kind, Below, Language.Of(tag)));
        string said = pdf.Said();

        Assert.DoesNotMatch(@"(?<![\w-])-\d", said);
        if (kind is "sheet" or "card")
        {
            Assert.Contains(tag == "en" ? "\u22121.5" : "\u22121,5", said, StringComparison.Ordinal);
        }
    }

    /// <summary>A single whose gates read below nothing at the finish.</summary>
    private static ExampleClub Below => ExampleClub.Of(
        "boat,class,seat,side,item,at,reading,bow_high,port_low\nTeal,1x,1,port,gate,catch,4,0,0\nTeal,1x,1,port,gate,finish,-1.5,0,0\nTeal,1x,1,starboard,gate,catch,4,0,0\nTeal,1x,1,starboard,gate,finish,-1.5,0,0");

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
