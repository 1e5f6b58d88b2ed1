using System.Net;
using Gatewright.Journal.Members;
using Gatewright.Server.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Server.Tests.Wall;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Attacks;

/// <summary>What every answer tells a browser not to do, and whom the server answers at all.</summary>
public sealed class HeaderTests(Stores stores)
{
    private const string Club = "upper-lock";

    [Fact]
    public async Task Every_answer_carries_them()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        var answers = new List<(string What, HttpResponseMessage Answer)>();
        foreach (Visitor visitor in new[] { keeper, server.Visitor() })
        {
            foreach (RouteRow row in RouteTable.Rows.Where(r => r.Method == HttpMethod.Get))
            {
                answers.Add((row.Route, await visitor.Client.GetAsync(
                    row.Address(Club), HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken)));
            }
        }

        foreach ((HttpMethod method, string path) in new[]
        {
            (HttpMethod.Get, "/gatewright.css"), (HttpMethod.Get, "/app/_framework/nowhere"), (HttpMethod.Get, "/no/such/page"), (HttpMethod.Post, "/api/session"),
            (HttpMethod.Put, "/api/session"), (HttpMethod.Options, "/api/session"), (HttpMethod.Get, "/api/clubs/none/entries?after=x"),
            (HttpMethod.Post, "/sign-in"), (HttpMethod.Delete, "/"),
        })
        {
            answers.Add(($"{method} {path}", await Bare.SendAsync(server.Address, method, path)));
        }

        answers.Add(("another host", await Bare.SendAsync(server.Address, HttpMethod.Get, "/", null, ("Host", "elsewhere.example"))));
        var wrong = new List<string>();
        foreach ((string what, HttpResponseMessage answer) in answers)
        {
            string policy = One(answer, "Content-Security-Policy");
            string[] rules = policy.Split("; ");

            // The app's page alone names its base, and its runtime is WebAssembly, which counts as a script that is made.
            bool isApp = what.StartsWith("GET /app/", StringComparison.Ordinal);
            bool isTight = rules.Contains("default-src 'none'")
                && rules.Contains("frame-ancestors 'none'")
                && rules.Contains(isApp ? "base-uri 'self'" : "base-uri 'none'")
                && rules.Contains("form-action 'self'")
                && rules.Contains(isApp ? "script-src 'self' 'wasm-unsafe-eval'" : "script-src 'self'")
                && rules.Contains("style-src 'self'")
                && !policy.Replace("'wasm-unsafe-eval'", null, StringComparison.Ordinal).Contains("unsafe", StringComparison.Ordinal)
                && !policy.Contains("http", StringComparison.Ordinal)
                && !policy.Contains('*', StringComparison.Ordinal);
            if (!isTight
                || One(answer, "X-Content-Type-Options") != "nosniff"
                || One(answer, "X-Frame-Options") != "DENY"
                || One(answer, "Referrer-Policy") != "no-referrer"
                || One(answer, "Cross-Origin-Opener-Policy") != "same-origin"
                || One(answer, "Cross-Origin-Resource-Policy") != "same-origin"
                || answer.Headers.Contains("Server")
                || answer.Headers.Any(h => h.Key.StartsWith("Access-Control", StringComparison.OrdinalIgnoreCase)))
            {
                wrong.Add($"{what}: {(int)answer.StatusCode} {policy}");
            }
        }

        Assert.True(answers.Count > 40);
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Theory]
    [InlineData("elsewhere.example")]
    [InlineData("127.0.0.1.elsewhere.example")]
    [InlineData("localhost.elsewhere.example:80")]
    public async Task A_page_whose_name_leads_here_is_refused(string host)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));

        HttpResponseMessage answer = await Bare.SendAsync(server.Address, HttpMethod.Get, "/api/session", null, ("Host", host));

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task No_other_site_may_read_an_answer()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        (string, string) origin = ("Origin", "https://elsewhere.example");
        foreach (HttpResponseMessage answer in new[]
        {
            await Bare.SendAsync(server.Address, HttpMethod.Get, "/api/session", null, origin),
            await Bare.SendAsync(server.Address, HttpMethod.Options, "/api/session", null, origin, ("Access-Control-Request-Method", "POST")),
        })
        {
            Assert.DoesNotContain(answer.Headers, h => h.Key.StartsWith("Access-Control", StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public async Task No_path_leads_out()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        string[] paths =
        [
            $"/api/clubs/{Club}/photos/..%2f..%2f..%2fetc%2fpasswd", $"/api/clubs/{Club}/photos/../../../etc/passwd",
            $"/api/clubs/{Club}/photos/%2e%2e", $"/api/clubs/..%2f{Club}/entries", $"/api/clubs/{Club}%00/entries",
            $"/api/clubs/{Club}%2fx/members", "/api/clubs/'%20or%201=1--/entries", "/..%2fgatewright-server.deps.json",
            "/gatewright-server.deps.json", "/..%5c..%5cetc%5cpasswd",
        ];
        foreach (string path in paths)
        {
            HttpStatusCode heard = (await keeper.GetAsync(path)).StatusCode;
            Assert.True(heard is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, $"{path}: {heard}");
        }

        HttpResponseMessage role = await keeper.SendAsync(
            HttpMethod.Put, $"/api/clubs/{Club}/members/..%2fm-keeper/role", new RoleRequest("coach"));
        Assert.Equal(HttpStatusCode.NotFound, role.StatusCode);
    }

    private static string One(HttpResponseMessage answer, string header) =>
        answer.Headers.TryGetValues(header, out IEnumerable<string>? values) ? string.Join(" | ", values) : string.Empty;
}
