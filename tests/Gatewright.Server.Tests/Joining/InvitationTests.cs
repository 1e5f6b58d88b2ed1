using AngleSharp.Html.Dom;
using System.Net;
using System.Net.Http.Json;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Tests.Joining;

/// <summary>A link lets in whom it was made for, once, as what it says, for as long as it says.</summary>
public sealed class InvitationTests(Stores stores)
{
    private const string Club = "upper-lock";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task How_long_a_link_holds_stands_on_the_page_of_people()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        (string invitation, _) = await server.InviteAsync(Club, Role.Coach);
        DateTime end = default;
        await server.WithTablesAsync(async db => end = new((await db.Invitations.SingleAsync(i => i.Invitation == invitation, Cancellation)).ExpiresTicks));

        IHtmlDocument page = await Page.OpenAsync(keeper, $"/club/{Club}/people");

        Assert.Contains(page.QuerySelectorAll("li .quiet"), who => who.TextContent == FormattableString.Invariant($"coach, until {end:yyyy-MM-dd}"));
    }

    [Theory, EveryEngine]
    public async Task Of_twenty_who_use_it_at_once_one_is_let_in(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        (_, string secret) = await server.InviteAsync(Club, Role.Coach);
        Visitor[] visitors = [.. Enumerable.Range(0, 20).Select(_ => server.Visitor())];
        await Task.WhenAll(visitors.Select(v => v.SessionAsync()));

        HttpResponseMessage[] answers = await Task.WhenAll(visitors.Select((v, i) => JoinAsync(v, secret, $"rower-{i}")));

        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.OK);
        Assert.Equal(19, answers.Count(a => a.StatusCode == HttpStatusCode.BadRequest));
        await server.WithTablesAsync(async db =>
        {
            Assert.Equal(1, await db.Users.CountAsync(Cancellation));
            Assert.Equal(1, await db.Memberships.CountAsync(Cancellation));
        });
    }

    [Theory, EveryEngine]
    public async Task Of_five_who_want_one_name_at_once_one_has_it(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        var people = new List<(Visitor Visitor, string Secret)>();
        for (int i = 0; i < 5; i++)
        {
            Visitor visitor = server.Visitor();
            await visitor.SessionAsync();
            people.Add((visitor, (await server.InviteAsync(Club, Role.Coach)).Secret));
        }

        HttpResponseMessage[] answers = await Task.WhenAll(people.Select(p => JoinAsync(p.Visitor, p.Secret, "rower")));
        HttpResponseMessage[] again = await Task.WhenAll(
            people.Where((_, i) => answers[i].StatusCode != HttpStatusCode.OK).Select((p, i) => JoinAsync(p.Visitor, p.Secret, $"rower-{i}")));

        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.OK);
        Assert.Equal(4, answers.Count(a => a.StatusCode == HttpStatusCode.BadRequest));
        Assert.Contains(
            "another name", await answers.First(a => a.StatusCode != HttpStatusCode.OK).Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);

        // Their links are not used up by a name that was taken.
        Assert.All(again, a => Assert.Equal(HttpStatusCode.OK, a.StatusCode));
    }

    [Theory, EveryEngine]
    public async Task Of_ten_links_that_one_person_uses_at_once_one_counts(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor rower = await server.MemberAsync("weir-side", "m-rower", Role.Keeper);
        string[] secrets = await Task.WhenAll(Enumerable.Range(0, 10).Select(async _ => (await server.InviteAsync(Club, Role.Coach)).Secret));

        HttpResponseMessage[] answers = await Task.WhenAll(secrets.Select(s => rower.SendAsync(
            HttpMethod.Post, "/api/join", new JoinRequest(s, null, null, null, null))));

        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.OK);
        Assert.Equal(9, answers.Count(a => a.StatusCode == HttpStatusCode.BadRequest));
        Assert.Equal(["coach of upper-lock", "keeper of weir-side"], (await rower.SessionAsync()).Clubs.Select(c => $"{c.Role} of {c.Club}"));
    }

    [Fact]
    public async Task It_gives_its_role_and_no_other()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        foreach (Role role in Roles.OfAccounts)
        {
            HttpResponseMessage invited = await keeper.SendAsync(
                HttpMethod.Post, $"/api/clubs/{Club}/invitations", new InviteRequest(role.Word(), "somebody", null, null));
            string link = (await invited.Content.ReadFromJsonAsync<InvitationMade>(Cancellation))!.Link;
            Visitor rower = server.Visitor();
            await JoinAsync(rower, link.Split('/')[^1], $"rower-{role.Word()}");

            SessionClub club = Assert.Single((await rower.SessionAsync()).Clubs);
            Assert.Equal((Club, role.Word()), (club.Club, club.Role));
        }
    }

    [Fact]
    public async Task Too_old_revoked_or_of_a_crew_it_makes_no_account()
    {
        var clock = new SetClock();
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite), o => o with { Clock = clock });
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        (_, string old) = await server.InviteAsync(Club, Role.Coach);
        clock.Ahead = TimeSpan.FromDays(7.01);
        (string invitation, string revoked) = await server.InviteAsync(Club, Role.Coach);
        await keeper.SendAsync(HttpMethod.Delete, $"/api/clubs/{Club}/invitations/{invitation}");
        (_, string crew) = await server.InviteAsync(Club, Role.Crew, ["boat-1"]);
        foreach (string secret in new[] { old, revoked, crew, "guessed", string.Empty, new string('x', 5000) })
        {
            Assert.Equal(HttpStatusCode.BadRequest, (await JoinAsync(server.Visitor(), secret, "rower")).StatusCode);
        }

        await server.WithTablesAsync(async db => Assert.Equal(1, await db.Users.CountAsync(Cancellation)));
    }

    [Fact]
    public async Task A_crews_link_that_is_revoked_lets_nobody_in_at_the_next_request()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, Written.Boat("m-keeper", Club, "boat-1", "Heron"), Written.Boat("m-keeper", Club, "boat-2", "Teal"));
        (string invitation, string secret) = await server.InviteAsync(Club, Role.Crew, ["boat-1"]);
        Visitor crew = server.Visitor();
        await crew.SendAsync(HttpMethod.Post, "/api/crew", new SecretRequest(secret));

        string seen = await (await crew.GetAsync($"/api/clubs/{Club}/boats")).Content.ReadAsStringAsync(Cancellation);
        Assert.Contains("Heron", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("Teal", seen, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await crew.GetAsync($"/api/clubs/{Club}/check?boat=boat-2")).StatusCode);
        await keeper.SendAsync(HttpMethod.Delete, $"/api/clubs/{Club}/invitations/{invitation}");

        Assert.Equal(HttpStatusCode.NotFound, (await crew.GetAsync($"/api/clubs/{Club}/boats")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await server.Visitor().SendAsync(HttpMethod.Post, "/api/crew", new SecretRequest(secret))).StatusCode);
    }

    [Fact]
    public async Task The_list_of_links_tells_no_secret()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        (_, string secret) = await server.InviteAsync(Club, Role.Coach);

        string list = await (await keeper.GetAsync($"/api/clubs/{Club}/invitations")).Content.ReadAsStringAsync(Cancellation);

        Assert.Contains("first eight", list, StringComparison.Ordinal);
        Assert.DoesNotContain(secret, list, StringComparison.Ordinal);
        Assert.DoesNotContain(Secret.Hash(secret), list, StringComparison.Ordinal);
    }

    private static Task<HttpResponseMessage> JoinAsync(Visitor visitor, string secret, string name) => visitor.SendAsync(
        HttpMethod.Post, "/api/join", new JoinRequest(secret, name, RunningServer.Password, "A rower", null));
}
