using AngleSharp.Html.Dom;
using Gatewright.Journal.Members;
using Gatewright.Server.Pages;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Joining;

/// <summary>Whoever has come in lands in the app, or finds it first: it alone holds boats ashore, releases and notes.</summary>
public sealed class ToTheAppTests(Stores stores)
{
    private const string Club = "upper-lock";

    [Fact]
    public async Task Joining_as_a_coach_ends_in_the_app()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        (_, string secret) = await server.InviteAsync(Club, Role.Coach);
        Visitor coach = server.Visitor();

        HttpResponseMessage joined = await Page.SendFormAsync(
            coach, $"/join/{secret}", "join", ("Form.Name", "coach"), ("Form.DisplayName", "Coach"), ("Form.Password", RunningServer.Password));

        Assert.Equal("/app/", await EndAsync(coach, joined));
    }

    [Theory]
    [InlineData(Role.Coach, "", "/app/")]
    [InlineData(Role.Helper, "", "/app/")]
    [InlineData(Role.Keeper, "", $"/club/{Club}")]
    [InlineData(Role.Keeper, "?ReturnUrl=/app/people", "/app/people")]
    [InlineData(Role.Coach, $"?ReturnUrl=/club/{Club}", $"/club/{Club}")]
    [InlineData(Role.Coach, "?ReturnUrl=//elsewhere.example/app/", "/app/")]
    public async Task Signing_in_ends_where_ones_role_works_or_where_one_came_from(Role role, string from, string end)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        await server.MakeAccountAsync("ada", Club, "m-ada", role);
        Visitor ada = server.Visitor();

        HttpResponseMessage signedIn = await Page.SendFormAsync(
            ada, "/sign-in" + from, "sign-in", ("Form.Name", "ada"), ("Form.Password", RunningServer.Password));

        Assert.Equal(end, await EndAsync(ada, signedIn));
    }

    [Theory]
    [InlineData("", LocalPath.SignedIn)]
    [InlineData("?ReturnUrl=/app/", "/app/")]
    [InlineData("?ReturnUrl=//elsewhere.example", LocalPath.SignedIn)]
    public async Task A_passkey_leads_where_the_password_does(string from, string to)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));

        IHtmlDocument page = await Page.OpenAsync(server.Visitor(), "/sign-in" + from);

        Assert.Equal(to, page.QuerySelector("[data-passkey=use]")?.GetAttribute("data-to"));
    }

    [Fact]
    public async Task Who_keeps_one_club_of_several_lands_at_the_list_of_them()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor ada = await server.MemberAsync(Club, "m-ada", Role.Coach);
        await server.JoinAsync(await server.AccountIdAsync($"m-ada.{Club}"), "island", "m-ada", Role.Keeper);

        Assert.Equal("/", await EndAsync(ada, await ada.GetAsync(LocalPath.SignedIn)));
    }

    [Fact]
    public async Task The_page_of_the_club_has_a_first_link_that_opens_the_app()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-ada", Role.Keeper);

        IHtmlDocument page = await Page.OpenAsync(keeper, $"/club/{Club}");

        Assert.Equal("/app/", page.QuerySelector("main a")?.GetAttribute("href"));
    }

    /// <summary>The path at which whoever is sent on arrives.</summary>
    private static async Task<string?> EndAsync(Visitor visitor, HttpResponseMessage answer)
    {
        string? path = null;
        for (int sent = 0; sent < 5 && answer.Headers.Location is { } to; sent++)
        {
            path = to.IsAbsoluteUri ? to.AbsolutePath : to.ToString();
            answer = await visitor.GetAsync(path);
        }

        return path;
    }
}
