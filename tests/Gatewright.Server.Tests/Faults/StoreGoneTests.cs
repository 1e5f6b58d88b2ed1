using System.Net;
using System.Net.Http.Json;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.AspNetCore.Mvc;

namespace Gatewright.Server.Tests.Faults;

/// <summary>A database that is away for a while is waited for.</summary>
public sealed class StoreGoneTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Member = "m-keeper";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task While_it_is_gone_all_hear_when_to_come_back_and_then_it_goes_on()
    {
        (Wire wire, StoreLocation location) = Wire.To(await stores.NewAsync(Engine.Postgres));
        using Wire held = wire;
        await using RunningServer server = await RunningServer.StartAsync(location);
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        Entry before = Written.Hold(Member, Club);
        Entry during = Written.Hold(Member, Club);
        await keeper.TakenAsync(Club, before);
        for (int time = 0; time < 2; time++)
        {
            wire.Cut();
            foreach (Func<Task<HttpResponseMessage>> ask in new Func<Task<HttpResponseMessage>>[]
            {
                () => keeper.PushAsync(Club, during),
                () => keeper.GetAsync($"/api/clubs/{Club}/entries"),
                () => keeper.GetAsync($"/api/clubs/{Club}/boats"),
                () => keeper.GetAsync($"/api/clubs/{Club}/members"),
                () => keeper.GetAsync("/api/session"),
                () => keeper.GetAsync("/api/account/passkeys"),
                () => keeper.SendAsync(HttpMethod.Post, "/api/session", new SignInRequest("somebody", "a password of some")),
                () => keeper.SendAsync(HttpMethod.Post, "/api/join", new JoinRequest("guessed", null, null, null, null)),
                () => keeper.SendAsync(HttpMethod.Delete, $"/api/clubs/{Club}/members/{Member}"),
            })
            {
                HttpResponseMessage answer = await ask();
                string what = $"{answer.RequestMessage!.Method} {answer.RequestMessage.RequestUri!.AbsolutePath}";
                Assert.Equal((what, HttpStatusCode.ServiceUnavailable), (what, answer.StatusCode));
                Assert.Equal(TimeSpan.FromSeconds(2), answer.Headers.RetryAfter?.Delta);
                Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
                Assert.Equal(503, (await answer.Content.ReadFromJsonAsync<ProblemDetails>(Cancellation))!.Status);
            }

            Assert.Equal(HttpStatusCode.ServiceUnavailable, (await keeper.GetAsync("/health/ready")).StatusCode);
            Assert.Equal(HttpStatusCode.OK, (await keeper.GetAsync("/health/live")).StatusCode);
            wire.Mend();
            await keeper.TakenAsync(Club, during);
            Assert.Equal(HttpStatusCode.OK, (await keeper.GetAsync("/health/ready")).StatusCode);
        }

        Assert.Equal([Line.Of(1, before), Line.Of(2, during)], await keeper.PullAsync(Club));
    }
}
