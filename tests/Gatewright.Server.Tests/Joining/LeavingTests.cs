using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Tests.Joining;

/// <summary>Who leaves takes the name along and leaves what was recorded; a club keeps a keeper.</summary>
public sealed class LeavingTests(Stores stores)
{
    private const string Club = "upper-lock";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_last_keeper_stays_one()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await server.MemberAsync(Club, "m-coach", Role.Coach);
        HttpResponseMessage[] answers =
        [
            await keeper.SendAsync(HttpMethod.Put, $"/api/clubs/{Club}/members/m-keeper/role", new RoleRequest("coach")),
            await keeper.SendAsync(HttpMethod.Delete, $"/api/clubs/{Club}/members/m-keeper"),
            await keeper.SendAsync(HttpMethod.Post, "/api/account/end", new ConfirmRequest(RunningServer.Password)),
        ];

        Assert.Equal([HttpStatusCode.Conflict, HttpStatusCode.Conflict, HttpStatusCode.BadRequest], answers.Select(a => a.StatusCode));
        Assert.Contains("keeper", await answers[2].Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);
        Assert.Equal("keeper", Assert.Single((await keeper.SessionAsync()).Clubs).Role);
        await keeper.SendAsync(HttpMethod.Put, $"/api/clubs/{Club}/members/m-coach/role", new RoleRequest("keeper"));
        Assert.Equal(
            HttpStatusCode.NoContent, (await keeper.SendAsync(HttpMethod.Delete, $"/api/clubs/{Club}/members/m-keeper")).StatusCode);
    }

    [Theory, EveryEngine]
    public async Task Of_two_keepers_who_go_at_once_one_stays(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor[] keepers = [await server.MemberAsync("home", "m-0", Role.Keeper), await server.MemberAsync("home", "m-1", Role.Keeper)];
        string[] accounts = [await server.AccountIdAsync("m-0.home"), await server.AccountIdAsync("m-1.home")];
        for (int round = 0; round < 12; round++)
        {
            string club = $"club-{round}";
            for (int i = 0; i < 2; i++)
            {
                await server.JoinAsync(accounts[i], club, $"m-{i}", Role.Keeper);
            }

            // Each the other, each themselves, or both the same way.
            HttpResponseMessage[] answers = await Task.WhenAll(keepers.Select((keeper, i) => (round % 3) switch
            {
                0 => keeper.SendAsync(HttpMethod.Put, $"/api/clubs/{club}/members/m-{1 - i}/role", new RoleRequest("helper")),
                1 => keeper.SendAsync(HttpMethod.Delete, $"/api/clubs/{club}/members/m-{i}"),
                _ => keeper.SendAsync(HttpMethod.Put, $"/api/clubs/{club}/members/m-{i}/role", new RoleRequest("coach")),
            }));

            Assert.Single(answers, a => a.StatusCode == HttpStatusCode.NoContent);
            Assert.All(answers, a => Assert.Contains(
                a.StatusCode, new[] { HttpStatusCode.NoContent, HttpStatusCode.Conflict, HttpStatusCode.Forbidden }));
            await server.WithTablesAsync(async db => Assert.Equal(
                1, await db.Memberships.CountAsync(m => m.Club == club && m.Role == "keeper" && m.AccountId != null, Cancellation)));
        }
    }

    [Theory, EveryEngine]
    public async Task Who_left_is_known_by_id_alone(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await server.MakeAccountAsync("quill-signs-in", Club, "m-quill", Role.Helper, "Quill of the lock");
        Visitor quill = server.Visitor();
        await quill.SignInAsync("quill-signs-in", RunningServer.Password);
        await quill.TakenAsync(Club, Written.Hold("m-quill", Club));
        string[] journal = await keeper.PullAsync(Club);

        HttpResponseMessage ended = await quill.SendAsync(HttpMethod.Post, "/api/account/end", new ConfirmRequest(RunningServer.Password));

        Assert.Equal(HttpStatusCode.NoContent, ended.StatusCode);
        Assert.Equal(journal, await keeper.PullAsync(Club));
        MemberSeen[] members = (await keeper.Client.GetFromJsonAsync<MemberSeen[]>($"/api/clubs/{Club}/members", Cancellation))!;
        Assert.Equal(new MemberSeen("m-quill", "former member", "former"), members.Single(m => m.Member == "m-quill"));
        foreach (string path in new[] { "members", "sign-ins", "entries", "invitations" })
        {
            string said = await (await keeper.GetAsync($"/api/clubs/{Club}/{path}")).Content.ReadAsStringAsync(Cancellation);
            Assert.DoesNotContain("quill-signs-in", said, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("Quill of", said, StringComparison.OrdinalIgnoreCase);
        }

        await server.WithTablesAsync(async db =>
        {
            Assert.Equal("m-keeper.upper-lock", (await db.Users.SingleAsync(Cancellation)).UserName);
            Assert.All(await db.SignIns.ToListAsync(Cancellation), s => Assert.NotNull(s.AccountId));
            Assert.Single(await db.SignIns.Select(s => s.AccountId).Distinct().ToListAsync(Cancellation));
        });
    }

    [Fact]
    public async Task An_account_that_ended_is_a_strangers_at_once()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor here = await server.MemberAsync(Club, "m-rower", Role.Helper);
        Visitor there = server.Visitor();
        await there.SignInAsync($"m-rower.{Club}", RunningServer.Password);

        await here.SendAsync(HttpMethod.Post, "/api/account/end", new ConfirmRequest(RunningServer.Password));

        Assert.Null((await there.SessionAsync()).Account);
        (HttpMethod Method, string Path, object? Body)[] asked =
        [
            (HttpMethod.Get, "/api/account/data", null),
            (HttpMethod.Get, "/api/account/passkeys", null),
            (HttpMethod.Post, "/api/account/passkeys/options", null),
            (HttpMethod.Put, "/api/account/name", new RenameRequest("Somebody")),
            (HttpMethod.Put, "/api/account/password", new PasswordRequest(RunningServer.Password, "five dry oars stand")),
            (HttpMethod.Post, "/api/account/end", new ConfirmRequest(RunningServer.Password)),
        ];
        foreach ((HttpMethod method, string path, object? body) in asked)
        {
            Assert.Equal((path, HttpStatusCode.Unauthorized), (path, (await there.SendAsync(method, path, body)).StatusCode));
        }

        Assert.Equal(HttpStatusCode.NotFound, (await there.GetAsync($"/api/clubs/{Club}/entries")).StatusCode);
        HttpResponseMessage signIn = await server.Visitor().SendAsync(
            HttpMethod.Post, "/api/session", new SignInRequest($"m-rower.{Club}", RunningServer.Password));
        Assert.Equal(HttpStatusCode.Unauthorized, signIn.StatusCode);
    }

    [Fact]
    public async Task A_member_who_was_ended_is_out_at_the_next_request()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor helper = await server.MemberAsync(Club, "m-helper", Role.Helper);

        await keeper.SendAsync(HttpMethod.Delete, $"/api/clubs/{Club}/members/m-helper");

        Assert.Equal(HttpStatusCode.NotFound, (await helper.GetAsync($"/api/clubs/{Club}/entries")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await helper.PushAsync(Club, Written.Hold("m-helper", Club))).StatusCode);
        Assert.Empty((await helper.SessionAsync()).Clubs);
    }

    [Theory, EveryEngine]
    public async Task Own_data_is_all_ones_own_and_nobody_elses(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor rower = await server.MemberAsync(Club, "m-rower", Role.Keeper);
        await server.JoinAsync(await server.AccountIdAsync($"m-rower.{Club}"), "weir-side", "m-there", Role.Helper);
        Visitor other = await server.MemberAsync(Club, "m-other", Role.Keeper);
        Entry[] own = [.. Enumerable.Range(0, 2100).Select(_ => Written.Hold("m-rower", Club))];
        Entry there = Written.Hold("m-there", "weir-side");
        await rower.TakenAsync(Club, own);
        await other.TakenAsync(Club, Enumerable.Range(0, 50).Select(_ => Written.Hold("m-other", Club)));
        await rower.TakenAsync("weir-side", there);

        using JsonDocument data = JsonDocument.Parse(
            await (await rower.GetAsync("/api/account/data")).Content.ReadAsStringAsync(Cancellation));

        Assert.Equal($"m-rower.{Club}", data.RootElement.GetProperty("account").GetProperty("signInName").GetString());
        Assert.Equal("signed-in", data.RootElement.GetProperty("signIns")[0].GetProperty("outcome").GetString());
        var entries = data.RootElement.GetProperty("memberships").EnumerateArray().ToDictionary(
            m => m.GetProperty("club").GetString()!,
            m => m.GetProperty("entries").EnumerateArray().Select(e => e.GetProperty("id").GetGuid()).ToArray());
        Assert.Equal(own.Select(e => e.Id), entries[Club]);
        Assert.Equal([there.Id], entries["weir-side"]);
        Assert.DoesNotContain("m-other", data.RootElement.GetRawText(), StringComparison.Ordinal);
        Assert.DoesNotContain("Hash\"", data.RootElement.GetRawText(), StringComparison.OrdinalIgnoreCase);
    }
}
