using System.Net;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Starting;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Starting;

public sealed class FirstKeeperTests(Stores stores)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [EveryEngine]
    public async Task The_link_of_the_latest_start_opens_a_club_once_and_those_before_do_not(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        string earlier = Secret(await FirstKeeper.InviteAsync(server.Services, "http://127.0.0.1", Cancellation));
        string latest = Secret(await FirstKeeper.InviteAsync(server.Services, "http://127.0.0.1", Cancellation));

        Assert.Equal(HttpStatusCode.BadRequest, await OpenAsync(server, earlier, "early"));
        Assert.Equal(HttpStatusCode.OK, await OpenAsync(server, latest, "keeper"));
        Assert.Equal(HttpStatusCode.BadRequest, await OpenAsync(server, latest, "another"));
        Assert.Null(await FirstKeeper.InviteAsync(server.Services, "http://127.0.0.1", Cancellation));
    }

    [Fact]
    public async Task Of_two_servers_that_start_at_once_one_link_lets_somebody_in()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        string one = Secret(await FirstKeeper.MakeAsync(server.Services, "http://127.0.0.1", null, Cancellation));
        string other = Secret(await FirstKeeper.MakeAsync(server.Services, "http://127.0.0.1", null, Cancellation));

        Assert.Equal(HttpStatusCode.OK, await OpenAsync(server, one, "keeper"));
        Assert.Equal(HttpStatusCode.BadRequest, await OpenAsync(server, other, "stranger"));
    }

    [Fact]
    public async Task A_further_club_is_opened_by_a_link_of_its_own_and_is_another_club()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        foreach (string name in new[] { "one", "two" })
        {
            // The second is made once there is somebody: it is not one of those that a start makes.
            Assert.Equal(HttpStatusCode.OK, await OpenAsync(server, Secret(await FirstKeeper.MakeAsync(server.Services, "http://127.0.0.1", null, Cancellation)), name));
        }

        using Visitor one = server.Visitor();
        await one.SignInAsync("one", RunningServer.Password);
        using Visitor two = server.Visitor();
        await two.SignInAsync("two", RunningServer.Password);
        string theirs = Assert.Single((await two.SessionAsync()).Clubs).Club;

        Assert.NotEqual(theirs, Assert.Single((await one.SessionAsync()).Clubs).Club);
        Assert.Equal(HttpStatusCode.NotFound, (await one.GetAsync($"/api/clubs/{theirs}/boats")).StatusCode);
    }

    [Fact]
    public async Task The_first_keeper_finds_what_was_recorded_from_a_terminal()
    {
        StoreLocation location = await stores.NewAsync(Engine.Sqlite);
        await new JournalStore(location).AppendAsync("boathouse", [Written.Boat("kim", "boathouse", "heron", "Heron")], Cancellation);
        await using RunningServer server = await RunningServer.StartAsync(location);
        string secret = Secret(await FirstKeeper.InviteAsync(server.Services, "http://127.0.0.1", Cancellation));
        using Visitor keeper = server.Visitor();

        // Its name is on record, or will be: it is not asked for.
        HttpResponseMessage joined = await keeper.SendAsync(
            HttpMethod.Post, "/api/join", new JoinRequest(secret, "keeper", RunningServer.Password, "Keeper", null));

        Assert.Equal(HttpStatusCode.OK, joined.StatusCode);
        await keeper.SessionAsync();
        Assert.Contains("Heron", await (await keeper.GetAsync("/api/clubs/boathouse/boats")).Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);
        Assert.True(await FirstKeeper.HasAsync(server.Services, "boathouse", Cancellation));
        Assert.False(await FirstKeeper.HasAsync(server.Services, "elsewhere", Cancellation));
    }

    [Fact]
    public async Task A_lost_password_is_set_anew_by_whoever_has_the_store()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        using Visitor member = await server.MemberAsync("club", "m-keeper", Role.Keeper);

        string password = (await NewPassword.SetAsync(server.Services, "m-keeper.club"))!;

        using Visitor again = server.Visitor();
        await again.SignInAsync("m-keeper.club", password);
        using Visitor old = server.Visitor();
        Assert.Equal(
            HttpStatusCode.Unauthorized,
            (await old.SendAsync(HttpMethod.Post, "/api/session", new SignInRequest("m-keeper.club", RunningServer.Password))).StatusCode);
        Assert.Null(await NewPassword.SetAsync(server.Services, "nobody"));
    }

    private static string Secret(string? link) => link!.Split('/')[^1];

    private static async Task<HttpStatusCode> OpenAsync(RunningServer server, string secret, string name)
    {
        using Visitor visitor = server.Visitor();
        return (await visitor.SendAsync(
            HttpMethod.Post, "/api/join", new JoinRequest(secret, name, RunningServer.Password, "Keeper", "Island school"))).StatusCode;
    }
}
