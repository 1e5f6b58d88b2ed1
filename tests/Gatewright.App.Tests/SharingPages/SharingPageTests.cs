using System.Globalization;
using System.Net;
using Bunit;
using Gatewright.App.Frame;
using Gatewright.App.Keeping.People;
using Gatewright.App.SharingPages;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.SharingPages;

/// <summary>What waits on this device is told as what it is, and there is a way out of each.</summary>
public sealed class SharingPageTests
{
    private readonly SharedClub _server = new();

    public SharingPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Photos_that_cannot_be_counted_are_told_and_the_page_stays()
    {
        await using ClubOfTwo club = await StartAsync();
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

    [Fact]
    public async Task What_another_member_recorded_here_is_not_told_as_refused_and_names_them()
    {
        await using ClubOfTwo club = await StartAsync();
        await club.RecordElsewhereAsync(new Held("teal", "knock"));
        Assert.Equal(ExchangePhase.Refused, (await SharedClub.ShareAsync(club)).Phase);
        await club.Page.Services.GetRequiredService<MemberNames>().AskAsync();

        Assert.Equal("For others to share: 1", club.Page.Render<SharedState>().Find(".shared-state").TextContent);
        IRenderedComponent<SharingPage> page = club.Page.Render<SharingPage>();
        Assert.Contains("Bea Alder: 1 entry", Section(page, "others"), StringComparison.Ordinal);
        Assert.Contains("Nothing.", Section(page, "waits"), StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll("section[aria-labelledby=others] a[href^='/sign-in']"));
    }

    [Fact]
    public async Task What_waits_for_another_is_saved_to_a_file_whole()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", _server.Answer);
        await club.RecordElsewhereAsync(new Held("teal", "a crack in the rigger"));
        JSRuntimeInvocationHandler saved = club.Page.JSInterop.SetupModule("./device.js").SetupVoid("save", _ => true).SetVoidResult();
        IRenderedComponent<OthersWait> page = club.Page.Render<OthersWait>();

        await page.PressAsync(".save");

        Assert.Contains("a crack in the rigger", (string)saved.Invocations.Single().Arguments[1]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task It_is_discarded_with_its_photo_only_after_it_was_said_what_is_lost(bool hasLeft)
    {
        await using ClubOfTwo club = await StartAsync();
        string photo = await club.Device.AddPhotoAsync("c", new byte[] { 1, 2, 3 }, "image/jpeg");
        await club.RecordElsewhereAsync(new Held("teal", "knock"), new PhotoTaken(Things.Boat, "teal", photo, 3, "image/jpeg"));
        if (hasLeft)
        {
            await club.LeaveAsync();
        }

        IRenderedComponent<OthersWait> page = club.Page.Render<OthersWait>();
        await page.PressAsync(".discard");
        Assert.Contains("2 entries and 1 photo", page.Find(".held").TextContent, StringComparison.Ordinal);
        Assert.Equal(2, club.InHand.Copy.OfOthers.Count);

        await page.PressAsync(".held button.main");

        Assert.Empty(club.InHand.Copy.NotShared);
        Assert.Empty(await club.Device.UnsentPhotosAsync("c"));
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("section")));
    }

    [Fact]
    public async Task What_the_member_here_is_going_to_send_is_not_theirs_to_discard_by_mistake()
    {
        await using ClubOfTwo club = await StartAsync();
        await club.RecordElsewhereAsync(new Held("teal", "knock"));
        Guid own = (await club.InHand.RecordAsync(new Held("teal", "crack")))[0];

        await club.InHand.Copy.DiscardAsync([.. club.InHand.Copy.NotShared.Select(o => o.Entry.Id)]);

        Assert.Equal(own, Assert.Single(club.InHand.Copy.NotShared).Entry.Id);
    }

    [Fact]
    public async Task A_photo_that_the_server_does_not_take_can_be_sent_again_saved_or_discarded()
    {
        _server.RefusesPhotos = true;
        await using ClubOfTwo club = await StartAsync();
        await club.Device.AddPhotoAsync("c", new byte[] { 1, 2, 3 }, "image/jpeg");
        Assert.Equal((ExchangePhase.Refused, 0, 1), await SharedClub.ShareAsync(club) is var told ? (told.Phase, told.Refused, told.PhotosRefused) : default);
        Assert.Equal("Photos refused: 1", club.Page.Render<SharedState>().Find(".shared-state").TextContent);
        IRenderedComponent<SharingPage> page = club.Page.Render<SharingPage>();
        Assert.Contains("it is no picture", Section(page, "refused-photos"), StringComparison.Ordinal);

        await page.PressAsync("section[aria-labelledby=refused-photos] button.quiet");
        Assert.Single(await club.Device.UnsentPhotosAsync("c"));
        await page.PressAsync("section[aria-labelledby=refused-photos] [role=alert] button.main");

        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#refused-photos")));
        Assert.Empty(await club.Device.UnsentPhotosAsync("c"));
        page.WaitForAssertion(() => Assert.Contains("Everything is shared.", page.Find(".state").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_club_that_was_left_is_not_told_as_shared()
    {
        await using ClubOfTwo club = await StartAsync();
        await club.LeaveAsync();
        Assert.Equal("Kept, not shared", club.Page.Render<SharedState>().Find(".shared-state").TextContent);
    }

    [Fact]
    public async Task What_another_club_on_this_device_has_is_told_and_the_club_can_be_opened()
    {
        await using ClubOfTwo club = await StartAsync();
        await club.Device.JoinAsync(new("ada", "Ada", [new("c", "Heron Rowing", "m-ada", "keeper"), new("d", "Weir Side", "m-ada", "keeper")], "token"));
        await (await club.Device.ClubAsync("d")).RecordAsync(new Held("teal", "knock"));
        IRenderedComponent<OtherClubs> page = club.Page.Render<OtherClubs>();
        Assert.Contains("Weir Side 1 entry", page.Markup.Replace("</b>", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);

        await page.PressAsync("button");

        Assert.Equal("d", club.InHand.Held.Club);
    }

    [Fact]
    public async Task Whoever_tries_a_server_that_wants_to_be_left_alone_is_told_until_when()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", _ => new(HttpStatusCode.TooManyRequests)
        {
            Content = new StringContent("{}"),
            Headers = { RetryAfter = new(TimeSpan.FromHours(1)) },
        });
        club.Page.JSInterop.SetupModule("./device.js").Setup<string>("room", _ => true).SetResult("""{"kept":true,"used":1,"most":2}""");
        Assert.Equal(ExchangePhase.Waiting, (await SharedClub.ShareAsync(club)).Phase);
        IRenderedComponent<SharingPage> page = club.Page.Render<SharingPage>();
        Assert.Empty(Tried(page));

        await page.PressAsync(TryNow);

        Assert.Matches("^The server asked to be left alone until [0-9]{2}:[0-9]{2}. Then it is tried again by itself.$", Tried(page));
    }

    [Fact]
    public async Task Whoever_tries_is_told_so_until_it_is_known_what_came_of_it()
    {
        await using ClubOfTwo club = await StartAsync();
        await SharedClub.ShareAsync(club);
        IRenderedComponent<SharingPage> page = club.Page.Render<SharingPage>();

        await page.PressAsync(TryNow);

        Assert.Equal("Trying …", Tried(page));
        page.WaitForAssertion(() => Assert.Empty(Tried(page)));
    }

    /// <summary>Whoever is asked stands at an answer that loses nothing, and where they were asked once they say no.</summary>
    [Fact]
    public async Task Where_it_is_asked_what_is_to_go_the_focus_goes_along()
    {
        await using ClubOfTwo club = await StartAsync();
        await club.Shelf.PutPhotoAsync("c", new KeptPhoto(new string('0', 64), "image/jpeg", new byte[] { 1 }, IsUnsent: false));
        await club.RecordElsewhereAsync(new Held("teal", "knock"));
        await club.InHand.RecordAsync(new Held("teal", "crack"));

        await AskedAsync(club.Page.Render<OthersWait>(), "#discard-others", "#keep-others");
        await AskedAsync(club.Page.Render<MakeRoom>(), "#clear-photos", "#keep-sent-photos");
        await AskedAsync(club.Page.Render<SignOutAsked>(), "#sign-out", "#share-first", ".row .quiet");

        async Task AskedAsync<T>(IRenderedComponent<T> part, string asks, string answer, string? no = null)
            where T : Microsoft.AspNetCore.Components.IComponent
        {
            await part.WaitForElement(asks).ClickAsync(new());
            Assert.Equal(answer, Focused(part));
            await part.PressAsync(no ?? answer);
            Assert.Equal(asks, Focused(part));
        }

        string Focused<T>(IRenderedComponent<T> part)
            where T : Microsoft.AspNetCore.Components.IComponent =>
            ((string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!).First(place => part.FindAll(place).Count > 0);
    }

    private async Task<ClubOfTwo> StartAsync()
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", _server.Answer);
        club.Page.JSInterop.SetupModule("./device.js").Setup<string>("room", _ => true).SetResult("""{"kept":true,"used":1,"most":2}""");
        return club;
    }

    private const string TryNow = "section[aria-labelledby=touch] button.main";

    private static string Tried(IRenderedComponent<SharingPage> page) => page.Find("section[aria-labelledby=touch] [role=status]").TextContent;

    private static string Section(IRenderedComponent<SharingPage> page, string name) => page.Find($"section[aria-labelledby={name}]").TextContent;
}
