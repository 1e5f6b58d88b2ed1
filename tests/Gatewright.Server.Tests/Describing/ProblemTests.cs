using System.Text.Json;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.Server.Tests.Describing;

/// <summary>What the API says of itself and of what went wrong.</summary>
public sealed class ProblemTests(Stores stores)
{
    private const string Club = "upper-lock";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Each_route_of_the_api_is_described()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        using JsonDocument described = JsonDocument.Parse(
            await (await server.Visitor().GetAsync("/openapi/v1.json")).Content.ReadAsStringAsync(Cancellation));
        var operations = described.RootElement.GetProperty("paths").EnumerateObject()
            .SelectMany(path => path.Value.EnumerateObject().Select(o => (Route: $"{o.Name.ToUpperInvariant()} {path.Name}", o.Value)))
            .ToDictionary(o => o.Route, o => o.Value);

        string[] routes = [.. server.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Where(e => e.RoutePattern.RawText!.TrimStart('/').StartsWith("api/", StringComparison.Ordinal))
            .SelectMany(e => e.Metadata.GetMetadata<HttpMethodMetadata>()!.HttpMethods.Select(m => $"{m} /{e.RoutePattern.RawText!.TrimStart('/')}"))];

        Assert.True(routes.Length > 25);
        Assert.Equal(routes.Order(StringComparer.Ordinal), operations.Keys.Order(StringComparer.Ordinal));
        Assert.All(operations, o => Assert.False(string.IsNullOrEmpty(o.Value.GetProperty("summary").GetString()), o.Key));
        Assert.All(
            operations.Where(o => o.Key.Contains("{club}", StringComparison.Ordinal)),
            o => Assert.All(["401", "403", "404"], s => Assert.True(o.Value.GetProperty("responses").TryGetProperty(s, out _), $"{o.Key} {s}")));
    }

    [Fact]
    public async Task Each_error_says_what_is_wrong_in_the_same_form()
    {
        await using RunningServer server = await RunningServer.StartAsync(
            await stores.NewAsync(Engine.Sqlite), o => o with { SignInsAMinute = 4 });
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        Visitor coach = await server.MemberAsync(Club, "m-coach", Role.Coach);
        Visitor stranger = server.Visitor();
        var large = new ByteArrayContent(new byte[9 * 1024 * 1024]);
        large.Headers.ContentType = new("application/x-ndjson");
        string entries = $"/api/clubs/{Club}/entries";
        (int Status, Func<Task<HttpResponseMessage>> Ask)[] asked =
        [
            (400, () => keeper.GetAsync($"{entries}?most=0")),
            (400, () => keeper.GetAsync($"{entries}?most=x")),
            (400, () => keeper.SendAsync(HttpMethod.Put, "/api/account/name", new StringContent("{", null, "application/json"))),
            (400, () => keeper.SendAsync(HttpMethod.Put, "/api/account/name", new RenameRequest(" "))),
            (400, () => Bare.SendAsync(server.Address, HttpMethod.Delete, "/api/session")),
            (401, () => stranger.GetAsync(entries)),
            (401, () => stranger.SendAsync(HttpMethod.Post, "/api/session", new SignInRequest("nobody", "no password"))),
            (403, () => coach.GetAsync($"/api/clubs/{Club}/invitations")),
            (404, () => coach.GetAsync("/api/clubs/weir-side/entries")),
            (404, () => coach.GetAsync("/api/no-such-thing")),
            (404, () => coach.GetAsync($"/api/clubs/{Club}/check?boat=none")),
            (405, () => coach.SendAsync(HttpMethod.Delete, entries)),
            (409, () => keeper.SendAsync(HttpMethod.Delete, $"/api/clubs/{Club}/members/m-keeper")),
            (413, () => keeper.SendAsync(HttpMethod.Post, entries, large, asksFirst: true)),
            (415, () => keeper.SendAsync(HttpMethod.Put, "/api/account/name", new StringContent("x", null, "text/plain"))),
            (415, () => keeper.SendAsync(HttpMethod.Post, entries, new StringContent("x", null, "text/plain"))),
            (401, () => stranger.SendAsync(HttpMethod.Post, "/api/session", new SignInRequest("nobody", "no password"))),
            (429, () => stranger.SendAsync(HttpMethod.Post, "/api/session", new SignInRequest("nobody", "no password"))),
        ];
        var wrong = new List<string>();
        foreach ((int status, Func<Task<HttpResponseMessage>> ask) in asked)
        {
            await CheckAsync(await ask(), status, wrong);
        }

        // The store without a table: what nobody thought of.
        await server.WithTablesAsync(async db =>
            await Microsoft.EntityFrameworkCore.RelationalDatabaseFacadeExtensions.ExecuteSqlRawAsync(db.Database, "DROP TABLE invitations", Cancellation));
        HttpResponseMessage broken = await keeper.GetAsync($"/api/clubs/{Club}/invitations");
        string said = await broken.Content.ReadAsStringAsync(Cancellation);
        await CheckAsync(broken, 500, wrong);

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.DoesNotContain("invitations\"", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
    }

    private static async Task CheckAsync(HttpResponseMessage answer, int status, List<string> wrong)
    {
        string what = $"{answer.RequestMessage!.Method} {answer.RequestMessage.RequestUri!.PathAndQuery}";
        string? type = answer.Content.Headers.ContentType?.MediaType;
        string said = await answer.Content.ReadAsStringAsync(Cancellation);
        if ((int)answer.StatusCode != status || type != "application/problem+json")
        {
            wrong.Add($"{what}: {(int)answer.StatusCode} and not {status}, {type}, {said}");
            return;
        }

        using JsonDocument problem = JsonDocument.Parse(said);
        if (problem.RootElement.GetProperty("status").GetInt32() != status
            || string.IsNullOrEmpty(problem.RootElement.GetProperty("title").GetString()))
        {
            wrong.Add($"{what}: {said}");
        }
    }
}
