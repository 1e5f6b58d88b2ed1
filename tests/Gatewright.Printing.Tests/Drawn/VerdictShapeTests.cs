using Gatewright.Core.Judging;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;
using Gatewright.Printing.Tests.World;

namespace Gatewright.Printing.Tests.Drawn;

/// <summary>Verdicts are told apart without colour: by where there is ink in their shape.</summary>
public class VerdictShapeTests
{
    private const int DotsAnInch = 127;
    private const double DotsAMm = DotsAnInch / 25.4;
    private const double Size = 24;

    /// <summary>A millimetre is a unit of the shape here: its middle, between middle and edge upwards, and its corner.</summary>
    [Theory]
    [InlineData(Verdict.Good, true, true, false)]
    [InlineData(Verdict.Unsure, false, false, false)]
    [InlineData(Verdict.Adjust, true, true, false)]
    [InlineData(Verdict.Stop, false, true, true)]
    public void Each_has_ink_where_its_shape_says(Verdict verdict, bool middle, bool above, bool corner)
    {
        GreyPicture page = Drawn(verdict);
        Assert.Equal((middle, above, corner), (Ink(page, 0, 0), Ink(page, 0, -5), Ink(page, 6.8, -6.8)));
    }

    [Fact]
    public void Adjust_is_a_point_where_good_is_round()
    {
        Assert.True(Ink(Drawn(Verdict.Good), 5, -5));
        Assert.False(Ink(Drawn(Verdict.Adjust), 6, -6));
        Assert.True(Ink(Drawn(Verdict.Adjust), 9.4, 0));
        Assert.False(Ink(Drawn(Verdict.Good), 9.4, 0));
    }

    [Fact]
    public void Not_read_is_a_stroke() =>
        Assert.Equal((true, false), (Ink(Drawn(null), 0, 0), Ink(Drawn(null), 0, -5)));

    private static bool Ink(GreyPicture page, double x, double y) => page.IsInk((int)((50 + x) * DotsAMm), (int)((50 + y) * DotsAMm));

    private static GreyPicture Drawn(Verdict? verdict)
    {
        using var pdf = new Poppler(Press.Print(ExampleClub.Imprint(), "shape", book => VerdictShape.Draw(book.Add(PageFormat.A4), verdict, 50, 50, Size)));
        return pdf.Pictures(DotsAnInch, "shape")[0];
    }
}
