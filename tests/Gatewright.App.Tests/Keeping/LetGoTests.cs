using System.Globalization;
using Bunit;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Tests.Keeping;

/// <summary>A club leaves a device with everything said that goes with it, and with a way to save it before.</summary>
public sealed class LetGoTests
{
    public LetGoTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task What_a_club_that_was_left_still_has_is_told_and_can_be_saved()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(new Held("teal", "a crack in the rigger"));
        await club.Device.AddPhotoAsync("c", new byte[] { 1 }, "image/jpeg");
        await club.LeaveAsync();
        JSRuntimeInvocationHandler saved = club.Page.JSInterop.SetupModule("./device.js").SetupVoid("save", _ => true).SetVoidResult();
        IRenderedComponent<LetGo> page = LetGo(club);
        Assert.Contains("1 entry and 1 photo", page.Markup, StringComparison.Ordinal);

        await page.PressAsync(".save");

        Assert.Contains("a crack in the rigger", (string)saved.Invocations.Single().Arguments[1]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Photos_that_cannot_be_counted_are_told_and_the_question_stays()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        club.Shelf.Reading = () => throw new ShelfException(ShelfFault.Damaged, "torn");

        IRenderedComponent<LetGo> page = LetGo(club);

        Assert.NotEmpty(page.Find("p.wrong").TextContent);
        Assert.Equal(2, page.FindAll("button").Count);
    }

    [Fact]
    public async Task A_club_that_cannot_be_let_go_of_is_told_where_it_was_touched()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.LeaveAsync();
        IRenderedComponent<ClubsHere> page = club.Page.Render<ClubsHere>();
        await page.PressAsync("li.club button.quiet");
        club.Shelf.LettingGo = () => throw new ShelfException(ShelfFault.Damaged, "torn");
        string before = page.Instance.Navigation.Uri;
        page.Instance.Navigation.NavigateTo("settings");

        await page.PressAsync("li.club .held button.main");

        Assert.NotEmpty(page.Find("[role=alert]").TextContent);
        Assert.NotEqual(before, page.Instance.Navigation.Uri);
    }

    private static IRenderedComponent<LetGo> LetGo(ClubOfTwo club) => club.Page.Render<LetGo>(p => p
        .Add(l => l.Copy, club.InHand.Copy)
        .Add(l => l.Name, "Heron Rowing"));
}
