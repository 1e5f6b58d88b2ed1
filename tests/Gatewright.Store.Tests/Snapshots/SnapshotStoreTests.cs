using System.Data.Common;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Replay.Snapshots;
using Gatewright.Store.Checking;
using Gatewright.Store.Schema;
using Gatewright.Store.Snapshots;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Tests.Snapshots;

public sealed class SnapshotStoreTests(Stores stores)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [EveryEngine]
    public async Task The_furthest_that_was_put_is_there_until_it_is_dropped(Engine engine)
    {
        StoreLocation location = await FilledAsync(engine);
        var snapshots = new SnapshotStore(location);

        Assert.Null(await snapshots.GetAsync("club", Cancellation));
        Assert.True(await PutAsync(snapshots, 10));
        Assert.True(await PutAsync(snapshots, 20));
        Assert.False(await PutAsync(snapshots, 15));
        Assert.Equal((20, 20), await ReadAsync(snapshots));
        Assert.Null(await snapshots.GetAsync("other", Cancellation));

        await snapshots.DropAsync("club", 10, Cancellation);
        Assert.Equal((20, 20), await ReadAsync(snapshots));
        await snapshots.DropAsync("club", 20, Cancellation);
        Assert.Null(await snapshots.GetAsync("club", Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task One_of_more_entries_than_there_are_is_not_taken(Engine engine)
    {
        var snapshots = new SnapshotStore(await FilledAsync(engine));

        Assert.False(await PutAsync(snapshots, 31));
        Assert.Null(await snapshots.GetAsync("club", Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task One_that_is_not_of_this_journal_does_not_agree_and_is_a_notice(Engine engine)
    {
        string nothing = engine == Engine.Sqlite ? "X''" : "''::bytea";
        foreach (string change in new[]
        {
            "UPDATE snapshots SET \"Number\" = 19",
            "UPDATE snapshots SET \"Number\" = 31",
            $"UPDATE snapshots SET \"Bytes\" = {nothing}",
            "UPDATE snapshots SET \"Club\" = 'other'",
        })
        {
            StoreLocation location = await FilledAsync(engine);
            var snapshots = new SnapshotStore(location);
            await PutAsync(snapshots, 20);
            await ChangeAsync(location, change);

            string club = change.Contains("other", StringComparison.Ordinal) ? "other" : "club";
            Assert.Null((await snapshots.GetAsync(club, Cancellation))!.Content);
            await NoticeAsync(location, club);
        }
    }

    [Theory]
    [EveryEngine]
    public async Task One_that_is_damaged_inside_is_a_notice(Engine engine)
    {
        StoreLocation location = await FilledAsync(engine);
        await PutAsync(new(location), 20);
        await NoFindingAsync(location);
        await ChangeAsync(location, engine == Engine.Sqlite
            ? "UPDATE snapshots SET \"Bytes\" = CAST(substr(\"Bytes\", 1, length(\"Bytes\") - 1) AS BLOB)"
            : "UPDATE snapshots SET \"Bytes\" = substring(\"Bytes\" FROM 1 FOR length(\"Bytes\") - 1)");

        await NoticeAsync(location, "club");
    }

    [Theory]
    [EveryEngine]
    public async Task One_that_says_otherwise_than_its_row_is_a_notice(Engine engine)
    {
        StoreLocation location = await FilledAsync(engine);
        Club club = Club.Empty("club").With(Made.Entries(1, 19).Select(Recorded.Of));
        await new SnapshotStore(location).PutAsync("club", 20, to => ClubSnapshot.Write(club, 20, to), Cancellation);

        await NoticeAsync(location, "club");
    }

    private static async Task NoFindingAsync(StoreLocation location) =>
        Assert.Empty((await StoreCheck.RunAsync(location, cancellation: Cancellation)).Findings);

    private static async Task NoticeAsync(StoreLocation location, string club)
    {
        StoreReport report = await StoreCheck.RunAsync(location, cancellation: Cancellation);
        StoreFinding only = Assert.Single(report.Findings);
        Assert.Equal((FindingWeight.Notice, club), (only.Weight, only.Club));
        Assert.StartsWith("The snapshot up to entry ", only.What, StringComparison.Ordinal);
    }

    private static Task<bool> PutAsync(SnapshotStore snapshots, int number)
    {
        Club club = Club.Empty("club").With(Made.Entries(1, number).Select(Recorded.Of));
        return snapshots.PutAsync("club", number, to => ClubSnapshot.Write(club, number, to), Cancellation);
    }

    private static async Task<(long Number, int Count)> ReadAsync(SnapshotStore snapshots)
    {
        KeptSnapshot kept = (await snapshots.GetAsync("club", Cancellation))!;
        (Club club, long number) = ClubSnapshot.Read(kept.Content!);
        Assert.Equal(kept.Number, number);
        return (number, club.Count);
    }

    private async Task<StoreLocation> FilledAsync(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        var journal = new JournalStore(location);
        await journal.AppendAsync("club", Made.Entries(1, 30), Cancellation);
        await journal.AppendAsync("other", Made.Entries(1, 30, "other"), Cancellation);
        return location;
    }

    private static async Task ChangeAsync(StoreLocation location, string sql)
    {
        await using StoreDb db = location.Open();
        await db.Database.OpenConnectionAsync(Cancellation);
        await using DbCommand command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        Assert.Equal(1, await command.ExecuteNonQueryAsync(Cancellation));
    }
}
