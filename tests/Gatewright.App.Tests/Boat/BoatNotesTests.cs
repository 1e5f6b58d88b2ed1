using System.Globalization;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Boat;

public sealed class BoatNotesTests
{
    public BoatNotesTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task That_a_note_or_a_photo_is_kept_is_said()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        club.Page.JSInterop.SetupModule("./photo.js").Setup<byte[]?>("picture", _ => true).SetResult([1, 2, 3]);
        await club.InHand.RecordAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }));
        IRenderedComponent<BoatPage> page = club.Page.Render<BoatPage>(p => p.Add(b => b.Key, "teal"));
        page.WaitForElement("#note");
        Assert.Empty(Said());

        await page.ChooseAsync("#note", "Bow ball is loose");
        await page.SendAsync("form:has(#note)");
        page.WaitForAssertion(() => Assert.Equal("Note kept.", Said()));

        await page.ChooseAsync("section[aria-labelledby=notes] input[type=file]", null);
        page.WaitForAssertion(() => Assert.Equal("Photo kept.", Said()));

        club.Shelf.IsFull = true;
        await page.ChooseAsync("#note", "Heel restraint is torn");
        await page.SendAsync("form:has(#note)");
        page.WaitForAssertion(() => Assert.NotEmpty(page.Find("#note-wrong").TextContent));
        Assert.Empty(Said());

        string Said() => page.Find("section[aria-labelledby=notes] [role=status]").TextContent;
    }
}
