using Gatewright.Journal.Entries;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Schema;
using Gatewright.Store.Tests;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Tests.Faults;

/// <summary>What was acknowledged is kept, once, whenever a server dies.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class KillTests(Stores stores) : IDisposable
{
    private const string Club = "upper-lock";
    private const int Devices = 3;

    private readonly string _folder = Directory.CreateTempSubdirectory("gw-killed-").FullName;

    private static readonly int Kills = LongRun.IsAsked ? 50 : 2;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory, EveryEngine]
    public async Task Killed_at_any_moment_it_loses_nothing_and_doubles_nothing(Engine engine)
    {
        StoreLocation location = await NewAsync(engine);
        using var server = new ServerProcess(location);
        await RunAsync(location, [server], engine == Engine.Sqlite ? Kills : LongRun.IsAsked ? 50 : 1);
    }

    [Fact]
    public async Task Of_two_servers_that_die_in_turn_devices_always_find_one()
    {
        StoreLocation location = await NewAsync(Engine.Postgres);
        using var one = new ServerProcess(location);
        using var other = new ServerProcess(location);
        await RunAsync(location, [one, other], LongRun.IsAsked ? 50 : 2);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static async Task RunAsync(StoreLocation location, ServerProcess[] servers, int kills)
    {
        await using (RunningServer first = await RunningServer.StartAsync(location))
        {
            for (int i = 0; i < Devices; i++)
            {
                await first.MakeAccountAsync($"rower-{i}", Club, $"m-{i}", Role.Helper);
            }
        }

        await Task.WhenAll(servers.Select(s => s.StartAsync()));
        var devices = new List<StubbornDevice>();
        for (int i = 0; i < Devices; i++)
        {
            Visitor[] ways = [.. servers.Select(s => new Visitor(s.Address))];
            foreach (Visitor way in ways)
            {
                await way.SignInAsync($"rower-{i}", RunningServer.Password);
            }

            devices.Add(new(Club, $"m-{i}", ways, seed: i));
        }

        using var stop = new CancellationTokenSource();
        Task[] running = [.. devices.Select(d => Task.Run(() => d.RunAsync(stop.Token), Cancellation))];
        var chance = new Random(kills);
        for (int kill = 0; kill < kills; kill++)
        {
            await Task.Delay(chance.Next(100, 700), Cancellation);
            ServerProcess victim = servers[kill % servers.Length];
            await victim.KillAsync();
            await victim.StartAsync();
        }

        await stop.CancelAsync();
        await Task.WhenAll(running);
        foreach (ServerProcess server in servers)
        {
            await server.KillAsync();
        }

        TestContext.Current.TestOutputHelper?.WriteLine(
            $"{kills} kills, {devices.Sum(d => d.Acknowledged.Count)} entries acknowledged, {devices.Sum(d => d.Lost)} answers lost");
        Assert.True(devices.Sum(d => d.Lost) >= 1, "no kill fell into a request");
        await CheckAsync(location, devices);
    }

    private static async Task CheckAsync(StoreLocation location, List<StubbornDevice> devices)
    {
        await using StoreDb db = location.Open();
        List<EntryRow> rows = await db.Entries.AsNoTracking().Where(e => e.Club == Club).OrderBy(e => e.Number).ToListAsync(Cancellation);
        var numbers = rows.ToDictionary(r => r.Id, r => r.Number);
        var acknowledged = devices.SelectMany(d => d.Acknowledged).ToDictionary(a => a.Key, a => a.Value);

        // As many as were recorded, and each under the number that its device was told.
        Assert.Equal(acknowledged.Count, rows.Count);
        Assert.All(acknowledged, a => Assert.Equal(a.Value, numbers[a.Key]));
        Assert.Equal(Enumerable.Range(1, rows.Count).Select(n => (long)n), rows.Select(r => r.Number));
        byte[] hash = HashChain.Start;
        foreach (EntryRow row in rows)
        {
            hash = HashChain.Next(hash, EntryOf(row));
            Assert.True(hash.AsSpan().SequenceEqual(row.Hash), $"the chain breaks at {row.Number}");
        }

        ClubRow club = await db.Clubs.AsNoTracking().SingleAsync(c => c.Club == Club, Cancellation);
        Assert.Equal((rows.Count, Convert.ToHexString(hash)), (club.Last, Convert.ToHexString(club.Head)));
        if (location.Engine == Engine.Sqlite)
        {
            Assert.Equal(["ok"], await db.Database.SqlQueryRaw<string>("PRAGMA integrity_check").ToListAsync(Cancellation));
            SqliteConnection.ClearAllPools();
        }
    }

    private async Task<StoreLocation> NewAsync(Engine engine)
    {
        if (engine == Engine.Postgres)
        {
            return await stores.NewAsync(engine);
        }

        StoreLocation location = StoreLocation.File(Path.Combine(_folder, "gatewright.db"));
        await using StoreDb db = location.Open();
        await db.Database.MigrateAsync(Cancellation);
        return location;
    }

    private static Entry EntryOf(EntryRow row) => new()
    {
        Id = row.Id, Club = row.Club, Member = row.Member, Device = row.Device, Time = new(row.Milliseconds, row.Counter),
        Kind = row.Kind, Version = row.Version, Body = row.Body,
    };
}
