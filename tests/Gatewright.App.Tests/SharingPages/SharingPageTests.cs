using System.Globalization;
using Bunit;
using Gatewright.App.SharingPages;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
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

    [Fact]
    public async Task Where_an_entry_goes_off_the_list_the_rest_of_it_has_the_focus()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        club.Page.JSInterop.SetupModule("./device.js").Setup<string>("room", _ => true).SetResult("""{"kept":true,"used":1,"most":2}""");
        await club.InHand.RecordAsync(new Held("teal", "knock"));
        OwnRecord own = Assert.Single((await club.Shelf.ReadAsync("c", ReadFrom.Beginning)).Own);
        await club.Shelf.ChangeOwnAsync("c", [own with { Text = own.Text.Replace("\"unsent\"", "\"refused\"", StringComparison.Ordinal) }], []);
        await club.InHand.Copy.LookAgainAsync();
        IRenderedComponent<SharingPage> page = club.Page.Render<SharingPage>();
        page.WaitForElement(".refused button");

        await page.PressAsync(".refused button", 1);
        await page.PressAsync(".refused .main");

        page.WaitForState(() => page.FindAll(".refused").Count == 0);
        string[] places = (string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!;
        Assert.True(page.Find(places.First(p => page.FindAll(p).Count > 0)).HasAttribute("tabindex"));
        Assert.Contains("#waits", places);
    }
}
