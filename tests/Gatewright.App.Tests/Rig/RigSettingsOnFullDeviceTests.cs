using System.Globalization;
using Bunit;
using Gatewright.App.Device;
using Gatewright.App.Rig;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Rig;

/// <summary>What this device has no more room to remember is told where it was tapped, and leaves the page standing.</summary>
public sealed class RigSettingsOnFullDeviceTests
{
    public RigSettingsOnFullDeviceTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task A_unit_that_cannot_be_kept_goes_back_with_a_word_why()
    {
        await using ClubOfTwo club = await WithTealAsync();
        var here = new RigHere(club.Page.Services.GetRequiredService<ThisDevice>(), club.InHand);
        int changed = 0;
        IRenderedComponent<UnitChoice> unit = club.Page.Render<UnitChoice>(p => p
            .Add(u => u.Here, here).Add(u => u.OnChanged, EventCallback.Factory.Create(this, () => changed++)));
        var disk = new TaskCompletionSource();
        (club.Shelf.IsFull, club.Shelf.Writing) = (true, () => disk.Task);

        Task tapped = unit.ChooseAsync("#unit-in", "on");
        await unit.InvokeAsync(() => { });
        Assert.True(IsChosen("#unit-in"));
        disk.SetResult();
        await tapped;

        Assert.NotEmpty(unit.Find("[role=alert]").TextContent);
        Assert.False(IsChosen("#unit-in"));
        Assert.True(IsChosen("#unit-cm"));
        Assert.Equal(0, changed);

        bool IsChosen(string place) => unit.Find(place).HasAttribute("checked");
    }

    [Fact]
    public async Task Measuring_that_cannot_be_begun_or_ended_says_so()
    {
        await using ClubOfTwo club = await WithTealAsync();
        IRenderedComponent<MeasurePage> page = club.Page.Render<MeasurePage>(p => p.Add(m => m.Boat, "teal"));
        NavigationManager navigation = club.Page.Services.GetRequiredService<NavigationManager>();
        string before = navigation.Uri;

        club.Shelf.IsFull = true;
        await page.SendAsync();
        Assert.NotEmpty(page.Find("[role=alert]").TextContent);

        club.Shelf.IsFull = false;
        await page.SendAsync();
        Assert.Empty(page.FindAll("[role=alert]"));

        club.Shelf.IsFull = true;
        await page.PressAsync("#more");
        await page.PressAsync("#enough");
        Assert.NotEmpty(page.Find("[role=alert]").TextContent);
        Assert.Equal(before, navigation.Uri);

        club.Shelf.IsFull = false;
        await page.PressAsync("#enough");
        Assert.NotEqual(before, navigation.Uri);
    }

    private static async Task<ClubOfTwo> WithTealAsync()
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2x" }));
        return club;
    }
}
