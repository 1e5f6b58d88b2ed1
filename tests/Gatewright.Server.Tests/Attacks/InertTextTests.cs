using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Pages;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Attacks;

/// <summary>What people write stays text, on every page that shows it.</summary>
public sealed class InertTextTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Script = "\"'><script>alert(1)</script><img src=x onerror=alert(1)><a href=\"javascript:alert(1)\">x</a> =1+1 {{7*7}}";

    [Fact]
    public async Task Scripts_in_every_field_are_shown_and_do_nothing()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        await server.MakeAccountAsync("rower", Club, "m-keeper", Role.Keeper, $"person {Script}");
        await server.JoinAsync(await server.AccountIdAsync("rower"), "weir-side", "m-other", Role.Keeper);
        Visitor keeper = server.Visitor();
        await keeper.SignInAsync("rower", RunningServer.Password);
        string key = $"key {Script}".Replace("/", string.Empty, StringComparison.Ordinal);
        await keeper.TakenAsync(
            Club,
            Written.Boat("m-keeper", Club, key, $"boat {Script}"),
            Written.By("m-keeper", Club, new Held(key, $"hold {Script}")),
            Written.By("m-keeper", Club, new ThingSet(Things.Settings, "club", new Dictionary<string, string?> { ["name"] = $"club {Script}" })));
        (_, string join) = await server.InviteAsync(Club, Role.Helper, label: $"label {Script}"[..100]);
        (_, string crew) = await server.InviteAsync(Club, Role.Crew, [key], label: $"label {Script}"[..100]);
        Visitor stranger = server.Visitor();
        (Visitor Who, string Path, string[] Shows)[] pages =
        [
            (keeper, "/", ["club"]),
            (keeper, $"/club/{Club}", ["club", "boat", "hold"]),
            (keeper, $"/club/{Club}/boat?key={Uri.EscapeDataString(key)}", ["boat", "hold"]),
            (keeper, $"/club/{Club}/people", ["person", "boat", "label"]),
            (keeper, "/account", ["person"]),
            (stranger, $"/join/{join}", ["club"]),
            (keeper, $"/join/{join}", ["person", "club"]),
            (stranger, $"/crew/{crew}", ["label"]),
            (stranger, "/sign-in?ReturnUrl=" + Uri.EscapeDataString(Script), []),
        ];
        foreach ((Visitor who, string path, string[] shows) in pages)
        {
            IHtmlDocument page = await Page.OpenAsync(who, path);
            Assert.Empty(Page.Live(page));
            Assert.All(shows, s => Assert.Contains($"{s} {Script}"[..100], page.DocumentElement.TextContent, StringComparison.Ordinal));
        }

        HttpResponseMessage made = await Page.SendFormAsync(
            keeper, $"/club/{Club}/people", "invite", ("Form.Role", "crew"), ("Form.Label", Script[..90]), ("Form.Boats", key));
        IHtmlDocument link = await Page.ReadAsync(made);
        Assert.NotNull(link.QuerySelector("section.made svg"));
        Assert.Empty(Page.Live(link));
        HttpResponseMessage refused = await Page.SendFormAsync(
            stranger, $"/join/{join}", "join", ("Form.Name", Script), ("Form.DisplayName", Script), ("Form.Password", Script));
        IHtmlDocument again = await Page.ReadAsync(refused);
        Assert.Empty(Page.Live(again));
        Assert.Equal(Script, again.QuerySelector("#name")!.GetAttribute("value"));
    }

    /// <summary>The look above must see what it looks for.</summary>
    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<script src='//elsewhere.example/a.js'></script>")]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("<a href=' JavaScript:alert(1)'>x</a>")]
    [InlineData("<p style='color:red'>x</p>")]
    public void A_live_page_is_told(string body) => Assert.Single(Page.Live(new HtmlParser().ParseDocument(body)));

    [Fact]
    public async Task After_signing_in_it_goes_on_within_the_site()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        await server.MakeAccountAsync("rower", Club, "m-keeper", Role.Keeper);
        (string To, string Goes)[] links =
        [
            ("/club/upper-lock", "/club/upper-lock"), ("//elsewhere.example/x", LocalPath.SignedIn), ("/\\elsewhere.example", LocalPath.SignedIn),
            ("https://elsewhere.example", LocalPath.SignedIn), ("https:elsewhere.example", LocalPath.SignedIn), ("javascript:alert(1)", LocalPath.SignedIn),
            ("/\t/elsewhere.example", LocalPath.SignedIn), ("/x\r\nSet-Cookie: a=b", LocalPath.SignedIn), (" //elsewhere.example", LocalPath.SignedIn), ("elsewhere.example", LocalPath.SignedIn),
        ];
        foreach ((string to, string goes) in links)
        {
            HttpResponseMessage answer = await Page.SendFormAsync(
                server.Visitor(), "/sign-in?ReturnUrl=" + Uri.EscapeDataString(to), "sign-in",
                ("Form.Name", "rower"), ("Form.Password", RunningServer.Password));

            Assert.Equal(System.Net.HttpStatusCode.Redirect, answer.StatusCode);
            Assert.Equal((to, new Uri(server.Address, goes)), (to, new Uri(server.Address, answer.Headers.Location!)));
        }
    }
}
