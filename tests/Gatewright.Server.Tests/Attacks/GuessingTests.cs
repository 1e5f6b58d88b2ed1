using System.Net;
using System.Net.Http.Json;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Tests.Attacks;

/// <summary>Passwords and secrets are not found by trying.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class GuessingTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Name = "m-keeper." + Club;

    [Theory, EveryEngine]
    public async Task Ten_wrong_passwords_lock_the_account_for_ten_minutes(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        await server.MakeAccountAsync(Name, Club, "m-keeper", Role.Keeper);
        Visitor guesser = server.Visitor();
        var said = new List<string> { await SaidAsync(guesser, "nobody-of-this-name", "a wrong password") };
        for (int i = 0; i < 10; i++)
        {
            said.Add(await SaidAsync(guesser, Name, "a wrong password"));
        }

        said.Add(await SaidAsync(guesser, Name, RunningServer.Password));
        DateTimeOffset? end = null;
        await server.WithTablesAsync(async db =>
        {
            Store.Schema.Account account = await db.Users.SingleAsync(a => a.UserName == Name, TestContext.Current.CancellationToken);
            end = account.LockoutEnd;
            account.LockoutEnd = DateTimeOffset.UtcNow.AddSeconds(-1);
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        });

        // One answer for all: whether there is such a name, and whether it is locked, is not to be heard from it.
        Assert.Single(said.Distinct());
        Assert.InRange(end!.Value - DateTimeOffset.UtcNow, TimeSpan.FromMinutes(8), TimeSpan.FromMinutes(10));
        await guesser.SignInAsync(Name, RunningServer.Password);
    }

    [Fact]
    public async Task Wrong_passwords_to_change_or_end_an_account_count_too()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor borrowed = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        for (int i = 0; i < 5; i++)
        {
            await borrowed.SendAsync(HttpMethod.Put, "/api/account/password", new PasswordRequest("a wrong password", "five dry oars stand"));
            await borrowed.SendAsync(HttpMethod.Post, "/api/account/end", new ConfirmRequest("a wrong password"));
        }

        Assert.Equal(
            HttpStatusCode.BadRequest,
            (await borrowed.SendAsync(HttpMethod.Post, "/api/account/end", new ConfirmRequest(RunningServer.Password))).StatusCode);
        Assert.NotNull((await borrowed.SessionAsync()).Account);
    }

    [Theory]
    [InlineData("POST", "/api/session", """{"name":"a","password":"b"}""")]
    [InlineData("POST", "/api/invitation", """{"secret":"guessed"}""")]
    [InlineData("POST", "/api/join", """{"secret":"guessed"}""")]
    [InlineData("POST", "/api/crew", """{"secret":"guessed"}""")]
    [InlineData("GET", "/join/guessed", null)]
    [InlineData("GET", "/crew/guessed", null)]
    public async Task One_address_gets_so_many_tries_a_minute(string method, string path, string? body)
    {
        await using RunningServer server = await RunningServer.StartAsync(
            await stores.NewAsync(Engine.Sqlite), o => o with { SignInsAMinute = 5 });
        Visitor guesser = server.Visitor();
        var heard = new List<HttpStatusCode>();
        HttpResponseMessage last = null!;
        for (int i = 0; i < 6; i++)
        {
            last = await guesser.SendAsync(new(method), path, body is null ? null : new StringContent(body, null, "application/json"));
            heard.Add(last.StatusCode);
        }

        Assert.DoesNotContain(HttpStatusCode.TooManyRequests, heard[..5]);
        Assert.Equal(HttpStatusCode.TooManyRequests, heard[5]);
        Assert.InRange(last.Headers.RetryAfter!.Delta!.Value, TimeSpan.FromSeconds(1), TimeSpan.FromMinutes(1));
    }

    [Fact]
    public async Task One_account_that_asks_without_end_is_slowed_and_others_are_not()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor coach = await server.MemberAsync(Club, "m-coach", Role.Coach);
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);

        HttpResponseMessage[] many = await Task.WhenAll(Enumerable.Range(0, 4000).Select(_ => coach.GetAsync("/api/clubs/none/entries")));

        Assert.Contains(many, a => a.StatusCode == HttpStatusCode.TooManyRequests);
        Assert.Equal(HttpStatusCode.OK, (await keeper.GetAsync($"/api/clubs/{Club}/entries")).StatusCode);
    }

    private static async Task<string> SaidAsync(Visitor visitor, string name, string password)
    {
        HttpResponseMessage answer = await visitor.SendAsync(HttpMethod.Post, "/api/session", new SignInRequest(name, password));
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        var problem = await answer.Content.ReadFromJsonAsync<Microsoft.AspNetCore.Mvc.ProblemDetails>(TestContext.Current.CancellationToken);
        return $"{problem!.Title} {problem.Detail} {answer.Headers.RetryAfter} {string.Join(' ', answer.Headers.Select(h => h.Key))}";
    }
}
