using System.Globalization;
using System.Net;
using Bunit;
using Gatewright.App.Keeping.People;
using Gatewright.App.Tests.World;
using Microsoft.JSInterop;

namespace Gatewright.App.Tests.Keeping;

public sealed class PeoplePageTests
{
    private readonly SharedClub _server = new();

    public PeoplePageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    /// <summary>What was pressed is gone then: the focus goes to an answer that ends nothing, and to what was done.</summary>
    [Fact]
    public async Task Whose_membership_is_to_end_is_asked_first_and_the_focus_goes_along()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", Answer);
        IRenderedComponent<PeoplePage> page = club.Page.Render<PeoplePage>();
        page.WaitForElement("#end-m-bea");

        await page.PressAsync("#end-m-bea");
        Assert.Equal("#keep-member", At());
        await page.PressAsync("#keep-member");
        Assert.Equal("[id='end-m-bea']", At());
        await page.PressAsync("#end-m-bea");
        await page.PressAsync(".held .main");
        page.WaitForElement("#done");
        Assert.Equal("#done", At());

        await page.PressAsync("section[aria-labelledby=links] button");
        page.WaitForState(() => page.FindAll("section[aria-labelledby=links] button").Count == 0);
        Assert.Equal("#done", At());

        string At() => ((string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!).First(p => page.FindAll(p).Count > 0);
    }

    [Fact]
    public async Task Where_a_browser_copies_nothing_the_link_is_there_to_be_copied_by_hand()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        club.Page.JSInterop.SetupVoid("navigator.clipboard.writeText", _ => true).SetException(new JSException("navigator.clipboard is undefined"));
        IRenderedComponent<InviteForm> form = club.Page.Render<InviteForm>(p => p
            .Add(f => f.Made, new LinkMade("i", "http://127.0.0.1/in/abc", "<svg/>", DateTimeOffset.UnixEpoch)));

        await form.PressAsync(".made button");

        Assert.Equal("Mark it and copy it by hand", form.Find(".made button").TextContent);
        Assert.Equal("http://127.0.0.1/in/abc", form.Find(".made code").TextContent);
    }

    private HttpResponseMessage Answer(HttpRequestMessage request) => (request.Method.Method, request.RequestUri!.AbsolutePath) switch
    {
        ("GET", "/api/clubs/c/invitations") => new()
        {
            Content = new StringContent("""[{"invitation":"i","role":"helper","label":"The juniors","expires":"2026-12-01T00:00:00+00:00"}]"""),
        },
        ("DELETE", _) => new(HttpStatusCode.NoContent),
        _ => _server.Answer(request),
    };
}
