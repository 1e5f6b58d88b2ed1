using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Gatewright.Server.Tests.Attacks;

/// <summary>Logs and traces tell nothing of people, and no secret.</summary>
public sealed class DiscretionTests(Stores stores)
{
    private const string Club = "upper-lock";

    [Theory, EveryEngine]
    public async Task Neither_logs_nor_traces_tell_of_people(Engine engine)
    {
        using var log = new Heard();
        var tags = new ConcurrentBag<string>();
        using var listener = new ActivityListener
        {
            ShouldListenTo = source => source.Name.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal),
            Sample = (ref ActivityCreationOptions<ActivityContext> _) => ActivitySamplingResult.AllDataAndRecorded,
            ActivityStopped = activity => tags.Add(
                $"{activity.DisplayName} {string.Join(' ', activity.TagObjects.Select(t => $"{t.Key}={t.Value}"))} {string.Join(' ', activity.Events.SelectMany(e => e.Tags).Select(t => $"{t.Value}"))}"),
        };
        ActivitySource.AddActivityListener(listener);
        await using RunningServer server = await RunningServer.StartAsync(
            await stores.NewAsync(engine), options => options with { SendsTelemetry = true });
        ILoggerFactory loggers = server.Services.GetRequiredService<ILoggerFactory>();
        loggers.AddProvider(log);
        loggers.CreateLogger("Gatewright.Server.Tests").Log(LogLevel.Warning, default, "heard", null, (said, _) => said);
        (_, string secret) = await server.InviteAsync(Club, Role.Keeper);
        (_, string crew) = await server.InviteAsync(Club, Role.Crew, ["boat-1"]);
        await LiveAsync(server, secret, crew);

        string told = string.Join('\n', log.Lines.Concat(tags));
        Assert.Contains("heard", told, StringComparison.Ordinal);
        Assert.Contains("/api/session", told, StringComparison.Ordinal);
        foreach (string secretWord in new[] { secret, crew, "quiet-rower", "Quill", "unknown-rower", "my secret password", "typed by mistake", "Hidden-Agent", "for-a-friend" })
        {
            Assert.DoesNotContain(secretWord, told, StringComparison.OrdinalIgnoreCase);
        }

        Assert.DoesNotContain(tags, t => t.Contains("client.address=", StringComparison.Ordinal) || t.Contains("network.peer.address=", StringComparison.Ordinal));
    }

    private static async Task LiveAsync(RunningServer server, string secret, string crew)
    {
        Visitor rower = server.Visitor();
        rower.Client.DefaultRequestHeaders.UserAgent.ParseAdd("Hidden-Agent/1.0");
        await rower.GetAsync($"/join/{secret}?note=for-a-friend");
        HttpResponseMessage joined = await rower.SendAsync(
            HttpMethod.Post, "/api/join", new JoinRequest(secret, "quiet-rower", "my secret password", "Quill of the lock", null));
        Assert.Equal(HttpStatusCode.OK, joined.StatusCode);
        await rower.SessionAsync();
        await rower.TakenAsync(Club, []);
        await rower.SendAsync(HttpMethod.Delete, "/api/session");
        Visitor again = server.Visitor();
        await again.SignInAsync("quiet-rower", "my secret password");
        foreach ((string name, string password) in new[] { ("quiet-rower", "typed by mistake"), ("unknown-rower", "typed by mistake"), ("quiet-rower\0", "x") })
        {
            await again.SendAsync(HttpMethod.Post, "/api/session", new SignInRequest(name, password));
        }

        Visitor other = server.Visitor();
        await other.GetAsync($"/crew/{crew}");
        await other.SendAsync(HttpMethod.Post, "/api/crew", new SecretRequest(crew));
        await other.SendAsync(HttpMethod.Post, "/api/join", new JoinRequest(secret, "quiet-rower", "my secret password", "Quill", null));
        await other.SendAsync(HttpMethod.Post, "/api/session", new StringContent("{\"name\":\"unknown-rower", null, "application/json"));
        await other.GetAsync($"/no/such/{secret}");
        for (int i = 0; i < 11; i++)
        {
            await other.SendAsync(HttpMethod.Post, "/api/session", new SignInRequest("quiet-rower", "typed by mistake"));
        }
    }

    /// <summary>All that is logged, as written.</summary>
    private sealed class Heard : ILoggerProvider, ILogger
    {
        public ConcurrentBag<string> Lines { get; } = [];

        public ILogger CreateLogger(string categoryName) => this;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(
            LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            Lines.Add($"{formatter(state, exception)} {exception}");

        public void Dispose()
        {
        }
    }
}
