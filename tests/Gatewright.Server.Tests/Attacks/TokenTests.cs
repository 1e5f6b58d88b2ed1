using System.Net;
using System.Net.Http.Json;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Server.Tests.Wall;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Attacks;

/// <summary>A page of another site makes a browser send its cookies, and gets nothing done: it lacks the token.</summary>
public sealed class TokenTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string TokenHeader = "X-Gatewright-Token";

    /// <summary>Every change of the table of routes, so that one that is added later is held to it too.</summary>
    [Fact]
    public async Task No_change_is_made_without_the_token()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor stranger = server.Visitor();
        string strangersToken = (await stranger.SessionAsync()).Antiforgery;
        RouteRow[] changes = [.. RouteTable.Rows.Where(r => r.Method != HttpMethod.Get)];
        var wrong = new List<string>();
        foreach (RouteRow row in changes)
        {
            foreach ((string, string)[] token in (IEnumerable<(string, string)[]>)[[], [(TokenHeader, strangersToken)], [(TokenHeader, "guessed")]])
            {
                HttpResponseMessage answer = await Bare.SendAsync(
                    server.Address, row.Method, row.Address(Club), row.Body?.Invoke("m-keeper"), [Bare.Cookies(keeper, server.Address), .. token]);
                string said = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
                if (answer.StatusCode != HttpStatusCode.BadRequest || !said.Contains("token", StringComparison.Ordinal))
                {
                    wrong.Add($"{row.Route} with {token.Length} header: {(int)answer.StatusCode} {said}");
                }
            }
        }

        Assert.True(changes.Length > 15);
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.Single(await MembersAsync(keeper));
    }

    [Fact]
    public async Task The_token_from_before_signing_in_is_worth_nothing_after()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor keeper = server.Visitor();
        string before = (await keeper.SessionAsync()).Antiforgery;
        await keeper.SignInAsync($"m-keeper.{Club}", RunningServer.Password);

        HttpResponseMessage answer = await Bare.SendAsync(
            server.Address, HttpMethod.Put, "/api/account/name", JsonContent.Create(new RenameRequest("Taken over")),
            Bare.Cookies(keeper, server.Address), (TokenHeader, before));

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.NotEqual("Taken over", (await keeper.SessionAsync()).DisplayName);
    }

    [Fact]
    public async Task Another_members_token_is_worth_nothing()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor coach = await server.MemberAsync(Club, "m-coach", Role.Coach);
        string coachs = (await coach.SessionAsync()).Antiforgery;

        // With the keeper's session and the coach's whole pair of tokens: what somebody plants who can set a cookie.
        string session = keeper.Cookies.GetCookies(server.Address)["gatewright"]!.Value;
        string half = coach.Cookies.GetCookies(server.Address)["gatewright-token"]!.Value;
        HttpResponseMessage answer = await Bare.SendAsync(
            server.Address, HttpMethod.Put, "/api/account/name", JsonContent.Create(new RenameRequest("Taken over")),
            ("Cookie", $"gatewright={session}; gatewright-token={half}"), (TokenHeader, coachs));

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    /// <summary>Somebody else's sign-in, done in a visitor's browser so that what they record goes to the wrong account.</summary>
    [Theory]
    [InlineData("/api/session", "application/json", """{"name":"m-keeper.upper-lock","password":"four dry oars stand"}""")]
    [InlineData("/api/session", "text/plain", """{"name":"m-keeper.upper-lock","password":"four dry oars stand"}""")]
    [InlineData("/sign-in", "application/x-www-form-urlencoded", "_handler=sign-in&Form.Name=m-keeper.upper-lock&Form.Password=four+dry+oars+stand")]
    public async Task Nobody_is_signed_in_from_another_site(string path, string type, string body)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        await server.MemberAsync(Club, "m-keeper", Role.Keeper);

        HttpResponseMessage answer = await Bare.SendAsync(
            server.Address, HttpMethod.Post, path, new StringContent(body, null, type), ("Origin", "https://elsewhere.example"));

        Assert.InRange((int)answer.StatusCode, 400, 415);
        Assert.DoesNotContain(answer.Headers, h => h.Key == "Set-Cookie" && h.Value.Any(v => v.StartsWith("gatewright=", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task No_page_takes_a_form_without_the_token()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        foreach (string path in new[] { "/sign-in", "/account", "/join/guessed", "/crew/guessed", $"/club/{Club}/people" })
        {
            var form = new FormUrlEncodedContent([new("_handler", "sign-out"), new("Form.Role", "keeper"), new("Form.Label", "x")]);
            HttpResponseMessage answer = await Bare.SendAsync(
                server.Address, HttpMethod.Post, path, form, Bare.Cookies(keeper, server.Address));

            Assert.Equal((path, HttpStatusCode.BadRequest), (path, answer.StatusCode));
        }

        Assert.NotNull((await keeper.SessionAsync()).Account);
    }

    private static async Task<MemberSeen[]> MembersAsync(Visitor visitor) =>
        (await visitor.Client.GetFromJsonAsync<MemberSeen[]>($"/api/clubs/{Club}/members", TestContext.Current.CancellationToken))!;
}
