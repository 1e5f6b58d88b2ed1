using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Store;
using Gatewright.Store.Opening;
using Gatewright.Tests.Databases;

[assembly: AssemblyFixture(typeof(Gatewright.Cli.Tests.Clubs.ClubStores))]

namespace Gatewright.Cli.Tests.Clubs;

/// <summary>Places for stores on either engine, and folders, that are gone when the tests end.</summary>
public sealed class ClubStores : IAsyncDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gw-cli-").FullName;
    private readonly Lazy<Task<PostgresServer>> _postgres = new(PostgresServer.StartAsync);

    public async ValueTask DisposeAsync()
    {
        if (_postgres.IsValueCreated)
        {
            await (await _postgres.Value).DisposeAsync();
        }

        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>An empty folder.</summary>
    public string NewFolder() => Directory.CreateDirectory(Path.Combine(_folder, $"{Guid.NewGuid():N}")).FullName;

    /// <summary>A place where no store is yet.</summary>
    internal async Task<ClubPlace> NewAsync(Engine engine)
    {
        if (engine == Engine.Postgres)
        {
            StoreLocation server = await (await _postgres.Value).NewDatabaseAsync();
            return new(server, ["--database", server.ConnectionString]);
        }

        string folder = Path.Combine(NewFolder(), "store");
        return new(StoreLocation.File(Path.Combine(folder, DataFolder.FileName)), ["--data", folder]);
    }

    internal Task<ClubPlace> NewAsync() => NewAsync(Engine.Sqlite);
}

/// <summary>A place for a store, and the options that name it.</summary>
internal sealed record ClubPlace(StoreLocation Location, string[] Options)
{
    /// <summary>The folder or the connection.</summary>
    public string Name => Options[1];

    public Harness.ProgramRun Run(params string[] args) => Harness.ProgramRun.Of([.. args, .. Options]);

    /// <summary>Records a file in a new club.</summary>
    public Harness.ProgramRun RecordNew(string file, string club = "shed") =>
        Run("record", file, "--member", "kim", "--club", club, "--new-club", "The shed");

    /// <summary>Adds facts to a club's journal, as a device would.</summary>
    public async Task AppendAsync(string club, params Fact[] facts)
    {
        DateTimeOffset now = DateTimeOffset.UtcNow;
        HybridClock clock = default;
        var entries = new List<Entry>();
        foreach (Fact fact in facts)
        {
            (HybridTime time, clock) = clock.Tick(now);
            (string kind, int version, byte[] body) = FactKinds.Write(fact);
            entries.Add(new()
            {
                Id = Guid.CreateVersion7(), Club = club, Member = "lee", Device = "test", Time = time, Kind = kind, Version = version, Body = body,
            });
        }

        await new JournalStore(Location).AppendAsync(club, entries, TestContext.Current.CancellationToken);
    }

    /// <summary>Lets an account's member into a club, as the server does.</summary>
    public async Task JoinAsync(string club, string member, string role)
    {
        await using Store.Schema.StoreDb db = Location.Open();
        db.Memberships.Add(new() { Club = club, Member = member, Role = role });
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
    }

    public async Task<Club> ClubAsync(string club) => Club.Empty(club).With(
        (await new JournalStore(Location).ReadAsync(club, 0, int.MaxValue, TestContext.Current.CancellationToken))
            .Select(n => Recorded.Of(n.Entry)));
}
