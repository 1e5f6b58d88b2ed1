using Gatewright.Printing.Tests.World;
using Gatewright.Words;

namespace Gatewright.Printing.Tests.Cards;

public class PocketCardTests
{
    /// <summary>"116,63 ± 1,63" over two lines reads as two figures: what stands before and after the sign stands beside it.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void A_figure_and_its_uncertainty_stand_in_one_line(string tag)
    {
        using var pdf = new Poppler(Printed.Of("card", Printed.Full, Language.Of(tag)));
        int signs = 0;
        foreach (Page page in pdf.Pages())
        {
            foreach (Word sign in page.Words.Where(w => w.Text == "±"))
            {
                // A blank is about a millimetre wide: 2.5 are less than two words and their blank.
                Assert.Contains(page.Words, w => IsInLine(w, sign) && w.Left >= sign.Right && w.Left - sign.Right < 2.5);
                Assert.Contains(page.Words, w => IsInLine(w, sign) && w.Right <= sign.Left && sign.Left - w.Right < 2.5);
                signs++;
            }
        }

        Assert.True(signs > 20, $"{signs} signs");

        static bool IsInLine(Word one, Word other) => Math.Abs(one.Bottom - other.Bottom) < 0.5;
    }
}
