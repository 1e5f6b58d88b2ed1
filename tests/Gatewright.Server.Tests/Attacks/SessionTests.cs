using System.Net;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Attacks;

/// <summary>A session is whose it is, for as long as it is theirs.</summary>
public sealed class SessionTests(Stores stores)
{
    private const string Club = "upper-lock";

    [Fact]
    public async Task A_cookie_from_before_is_not_the_session_after()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor keeper = server.Visitor();
        keeper.Cookies.Add(server.Address, new Cookie("gatewright", "planted"));
        await keeper.SignInAsync($"m-keeper.{Club}", RunningServer.Password);

        Assert.NotEqual("planted", keeper.Cookies.GetCookies(server.Address)["gatewright"]!.Value);
        Assert.Equal(
            HttpStatusCode.Unauthorized,
            (await Bare.SendAsync(server.Address, HttpMethod.Get, "/api/account/data", null, ("Cookie", "gatewright=planted"))).StatusCode);
    }

    [Fact]
    public async Task After_the_password_changed_other_sessions_end_within_minutes()
    {
        var clock = new SetClock();
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite), o => o with { Clock = clock });
        Visitor here = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor stolen = server.Visitor();
        await stolen.SignInAsync($"m-keeper.{Club}", RunningServer.Password);

        HttpResponseMessage changed = await here.SendAsync(
            HttpMethod.Put, "/api/account/password", new PasswordRequest(RunningServer.Password, "five dry oars stand"));
        clock.Ahead = TimeSpan.FromMinutes(3);

        Assert.Equal(HttpStatusCode.NoContent, changed.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await stolen.GetAsync($"/api/clubs/{Club}/entries")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await here.GetAsync($"/api/clubs/{Club}/entries")).StatusCode);
    }

    [Fact]
    public async Task The_cookie_of_a_session_that_was_ended_is_gone_from_the_browser()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);

        await keeper.SendAsync(HttpMethod.Delete, "/api/session");

        Assert.Null(keeper.Cookies.GetCookies(server.Address)["gatewright"]);
        Assert.Equal(HttpStatusCode.Unauthorized, (await keeper.GetAsync($"/api/clubs/{Club}/entries")).StatusCode);
    }

    [Fact]
    public async Task A_session_nobody_used_for_a_month_has_ended()
    {
        var clock = new SetClock();
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite), o => o with { Clock = clock });
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        (string, string) cookies = Bare.Cookies(keeper, server.Address);

        clock.Ahead = TimeSpan.FromDays(31);

        Assert.Equal(
            HttpStatusCode.Unauthorized,
            (await Bare.SendAsync(server.Address, HttpMethod.Get, $"/api/clubs/{Club}/entries", null, cookies)).StatusCode);
    }

    [Theory]
    [InlineData("http://127.0.0.1:5380", false)]
    [InlineData("https://gates.example.org", true)]
    public async Task Cookies_are_out_of_reach_of_scripts_and_other_sites(string publicAddress, bool isSecure)
    {
        await using RunningServer server = await RunningServer.StartAsync(
            await stores.NewAsync(Engine.Sqlite), o => o with { PublicAddress = new(publicAddress), IsBehindProxy = true });
        string[] set = await SetCookiesAsync(server, isSecure ? "https" : "http");

        Assert.Equal(
            ["gatewright", "gatewright-crew", "gatewright-token"], set.Select(c => c.Split('=')[0]).Distinct().Order(StringComparer.Ordinal));
        Assert.All(set, c => Assert.Contains("; httponly", c, StringComparison.OrdinalIgnoreCase));
        Assert.All(set, c => Assert.Matches("(?i); samesite=(lax|strict)", c));
        Assert.All(set, c => Assert.Equal(isSecure, c.Contains("; secure", StringComparison.OrdinalIgnoreCase)));
        Assert.All(set, c => Assert.DoesNotContain("; domain", c, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>What the server sets: by hand, since a browser would not send back over http what is for https alone.</summary>
    private static async Task<string[]> SetCookiesAsync(RunningServer server, string scheme)
    {
        (string, string) reached = ("X-Forwarded-Proto", scheme);
        await server.MakeAccountAsync("rower", "upper-lock", "m-rower", Role.Helper);
        (_, string secret) = await server.InviteAsync("upper-lock", Role.Crew, ["boat-1"]);
        var set = new List<string>();
        var cookies = new Dictionary<string, string>();
        foreach ((string path, object body) in new (string, object)[]
        {
            ("/api/crew", new SecretRequest(secret)), ("/api/session", new SignInRequest("rower", RunningServer.Password)),
        })
        {
            HttpResponseMessage session = await Bare.SendAsync(server.Address, HttpMethod.Get, "/api/session", null, [reached, Header()]);
            Keep(session);
            string token = (await System.Net.Http.Json.HttpContentJsonExtensions.ReadFromJsonAsync<Session>(
                session.Content, TestContext.Current.CancellationToken))!.Antiforgery;
            HttpResponseMessage answer = await Bare.SendAsync(
                server.Address, HttpMethod.Post, path, System.Net.Http.Json.JsonContent.Create(body, body.GetType()),
                reached, Header(), ("X-Gatewright-Token", token));
            Assert.True(answer.IsSuccessStatusCode, $"{path}: {answer.StatusCode}");
            Keep(answer);
            cookies.Remove("gatewright-crew");
        }

        return [.. set];

        (string, string) Header() => ("Cookie", string.Join("; ", cookies.Select(c => $"{c.Key}={c.Value}")));

        void Keep(HttpResponseMessage answer)
        {
            foreach (string cookie in answer.Headers.TryGetValues("Set-Cookie", out IEnumerable<string>? values) ? values : [])
            {
                set.Add(cookie);
                string[] pair = cookie.Split(';')[0].Split('=', 2);
                cookies[pair[0]] = pair[1];
            }
        }
    }
}
