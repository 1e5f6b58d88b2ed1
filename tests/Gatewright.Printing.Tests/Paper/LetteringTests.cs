using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Tests.Paper;

/// <summary>Letters are as high as the eye needs where the paper is read. ISO 9241-303: a capital of 16′ of arc at least (from memory).</summary>
public class LetteringTests
{
    private const double LeastMinutes = 16;

    [Fact]
    public void What_is_read_at_work_is_read_at_arm_s_length() =>
        Assert.All([Lettering.Work, Lettering.WorkBold, Lettering.Heading, Lettering.Verdict, Lettering.Name], l => Assert.True(Minutes(l, 640) >= LeastMinutes, $"{l.Points} points"));

    [Fact]
    public void All_else_is_read_in_the_hand() =>
        Assert.All([Lettering.Small, Lettering.Note], l => Assert.True(Minutes(l, 400) >= LeastMinutes, $"{l.Points} points"));

    private static double Minutes(Lettering lettering, double distanceMm) => Math.Atan(lettering.CapitalMm / distanceMm) * 180 / Math.PI * 60;
}
