using System.Globalization;
using System.Net;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.AspNetCore.Components.Endpoints;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.Server.Tests.Wall;

/// <summary>Each route by each caller: who is let in, and what those hear who are not.</summary>
public sealed class WallTests(Stores stores)
{
    internal const string Club = "upper-lock";
    private const string Other = "weir-side";

    public static TheoryData<string> Routes => [.. RouteTable.Rows.Select(r => r.Route)];

    [Fact]
    public async Task Every_route_has_its_row()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));

        IEnumerable<string> routes = server.Services.GetRequiredService<EndpointDataSource>().Endpoints
            .OfType<RouteEndpoint>()
            .Where(e => !IsFile(e))
            .SelectMany(Names)
            .Distinct();

        Assert.Equal(RouteTable.Rows.Select(r => r.Route).Order(StringComparer.Ordinal), routes.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Each_caller_hears_what_the_table_says()
    {
        await using RunningServer server = await RunningServer.StartAsync(
            await stores.NewAsync(Engine.Sqlite), options => options with { SignInsAMinute = 1000 });
        await PutUpAsync(server);
        var wrong = new List<string>();
        foreach (RouteRow row in RouteTable.Rows.OrderBy(r => r.IsLast))
        {
            string[] expected = row.Answers.Split(' ');
            for (int i = 0; i < RouteTable.Callers.Count; i++)
            {
                string heard = await AskAsync(row, i);
                if (heard != expected[i])
                {
                    wrong.Add($"{row.Route}: {RouteTable.Callers[i]} heard {heard} and not {expected[i]}");
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    private readonly List<(Visitor Visitor, string Member)> _callers = [];
    private string _spare = string.Empty;

    private async Task PutUpAsync(RunningServer server)
    {
        _callers.Add((server.Visitor(), "m-nobody"));
        _callers.Add((await server.MemberAsync(Other, "m-other", Role.Keeper), "m-other"));
        Visitor crew = server.Visitor();
        (_, string secret) = await server.InviteAsync(Club, Role.Crew, ["boat-1"]);
        Assert.Equal(HttpStatusCode.NoContent, (await crew.SendAsync(HttpMethod.Post, "/api/crew", new { secret })).StatusCode);
        await crew.SessionAsync();
        _callers.Add((crew, "m-crew"));
        foreach (Role role in new[] { Role.Coach, Role.Helper, Role.Keeper })
        {
            _callers.Add((await server.MemberAsync(Club, $"m-{role.Word()}", role), $"m-{role.Word()}"));
        }

        await server.MemberAsync(Club, "m-spare", Role.Helper);
        await server.MemberAsync(Club, "m-leaving", Role.Helper);
        (_spare, _) = await server.InviteAsync(Club, Role.Coach);
        await _callers[^1].Visitor.TakenAsync(Club, Written.Boat("m-keeper", Club, "boat-1", "Heron"));
        await _callers[^1].Visitor.SendAsync(HttpMethod.Put, $"/api/clubs/{Club}/photos/{Picture.Sha256}", Picture.Content);
    }

    private async Task<string> AskAsync(RouteRow row, int caller)
    {
        (Visitor visitor, string member) = _callers[caller];
        string address = row.Address(Club).Replace("{spare}", _spare, StringComparison.Ordinal);
        int status = await StatusAsync(visitor, row, address, member);
        return status is >= 200 and < 300 ? "2xx" : status.ToString(CultureInfo.InvariantCulture);
    }

    private static async Task<int> StatusAsync(Visitor visitor, RouteRow row, string address, string member)
    {
        if (row.Method != HttpMethod.Get)
        {
            return (int)(await visitor.SendAsync(row.Method, address, row.Body?.Invoke(member))).StatusCode;
        }

        // Of news, the head of the answer is all there is until there are any.
        using HttpResponseMessage answer = await visitor.Client.GetAsync(
            address, HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
        return (int)answer.StatusCode;
    }

    private static bool IsFile(RouteEndpoint endpoint) =>
        endpoint.Metadata.Any(m => m.GetType().Name.Contains("StaticAsset", StringComparison.Ordinal))
        || endpoint.RoutePattern.RawText?.EndsWith(":file}", StringComparison.Ordinal) == true
        || endpoint.RoutePattern.RawText?.TrimStart('/').StartsWith("_framework/", StringComparison.Ordinal) == true;

    private static IEnumerable<string> Names(RouteEndpoint endpoint)
    {
        string path = "/" + endpoint.RoutePattern.RawText!.TrimStart('/');
        if (endpoint.Metadata.GetMetadata<ComponentTypeMetadata>() is not null)
        {
            return [$"PAGE {path}"];
        }

        IReadOnlyList<string> methods = endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"];
        return methods.Where(m => m is not "HEAD").Select(m => $"{m} {path}");
    }
}
