using System.Globalization;
using Bunit;
using Gatewright.App.SharingPages;
using Gatewright.App.Tests.World;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Tests.SharingPages;

public sealed class SharingPageTests
{
    public SharingPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Photos_that_cannot_be_counted_are_told_and_the_page_stays()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        club.Page.JSInterop.SetupModule("./device.js").Setup<string>("room", _ => true).SetResult("""{"kept":true,"used":1,"most":2}""");
        club.Shelf.Reading = () => throw new ShelfException(ShelfFault.Damaged, "torn");

        IRenderedComponent<SharingPage> page = club.Page.Render<SharingPage>();

        page.WaitForAssertion(() => Assert.NotEmpty(page.Find("p.wrong[role=alert]").TextContent));
        Assert.NotNull(page.Find("#waits"));
    }
}
