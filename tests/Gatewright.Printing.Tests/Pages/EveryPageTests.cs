using Gatewright.Printing.RigSheets;
using Gatewright.Printing.Tests.World;

namespace Gatewright.Printing.Tests.Pages;

public class EveryPageTests
{
    [Fact]
    public void Trial()
    {
        ExampleClub club = ExampleClub.Shed();
        using var pdf = new Poppler(RigSheetPrint.Of(club.Club, club.Boats(), ExampleClub.Imprint()));
        Assert.NotEmpty(pdf.Pictures(60, "sheet"));
    }
}
