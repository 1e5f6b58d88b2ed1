using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Store.Blobs;
using Gatewright.Store.Checking;
using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Gatewright.Store.Tests.Blobs;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Tests.Checking;

public sealed class StoreCheckTests(Stores stores)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [EveryEngine]
    public async Task A_store_as_it_was_written_is_sound(Engine engine)
    {
        StoreLocation location = await FilledAsync(engine);

        StoreReport report = await StoreCheck.RunAsync(location, cancellation: Cancellation);

        Assert.Empty(report.Findings);
        Assert.True(report.IsSound);
        Assert.Equal((2, 1203, 1), (report.Clubs, report.Entries, report.Blobs));
    }

    [Theory]
    [EveryEngine]
    public async Task Whatever_is_done_to_a_row_is_found_at_its_number(Engine engine)
    {
        await FoundAsync(engine, "UPDATE entries SET \"Member\" = 'm2' WHERE \"Club\" = 'club' AND \"Number\" = 700", 700);
        await FoundAsync(engine, "UPDATE entries SET \"Hash\" = \"Body\" WHERE \"Club\" = 'club' AND \"Number\" = 700", 700, 701);
        await FoundAsync(engine, "UPDATE entries SET \"Counter\" = 1 WHERE \"Club\" = 'club' AND \"Number\" = 1", 1);
        await FoundAsync(engine, "DELETE FROM entries WHERE \"Club\" = 'club' AND \"Number\" = 700", 701);
        await FoundAsync(engine, "DELETE FROM entries WHERE \"Club\" = 'club' AND \"Number\" < 3", 3);
        await FoundAsync(engine, "DELETE FROM entries WHERE \"Club\" = 'club' AND \"Number\" = 1200", default(long?));
        await FoundAsync(engine, "UPDATE clubs SET \"Last\" = 1199 WHERE \"Club\" = 'club'", 1200);
        await FoundAsync(engine, "UPDATE clubs SET \"Head\" = (SELECT \"Hash\" FROM entries WHERE \"Club\" = 'club' AND \"Number\" = 5) WHERE \"Club\" = 'club'", 1200);
        await FoundAsync(
            engine,
            "UPDATE entries SET \"Number\" = -1 WHERE \"Club\" = 'club' AND \"Number\" = 10; "
            + "UPDATE entries SET \"Number\" = 10 WHERE \"Club\" = 'club' AND \"Number\" = 11; "
            + "UPDATE entries SET \"Number\" = 11 WHERE \"Club\" = 'club' AND \"Number\" = -1",
            10, 11, 12);
    }

    [Theory]
    [EveryEngine]
    public async Task A_body_that_is_no_longer_one_is_told_as_such(Engine engine)
    {
        string broken = engine == Engine.Sqlite ? "X'7B'" : "'\\x7B'::bytea";

        StoreReport report = await FoundAsync(
            engine, $"UPDATE entries SET \"Body\" = {broken} WHERE \"Club\" = 'club' AND \"Number\" = 700", 700, 700);

        Assert.Contains(report.Findings, f => f.What.StartsWith("The entry cannot be read", StringComparison.Ordinal));
    }

    [Theory]
    [EveryEngine]
    public async Task Pictures_and_members_are_looked_at_too(Engine engine)
    {
        string flipped = engine == Engine.Sqlite ? "X'FFD8FF'" : "'\\xFFD8FF'::bytea";
        await FoundAsync(engine, $"UPDATE blobs SET \"Bytes\" = {flipped}", default(long?));
        await FoundAsync(
            engine,
            "INSERT INTO memberships (\"Club\", \"Member\", \"AccountId\", \"Role\") VALUES ('club', 'm1', 'gone', 'keeper')",
            default(long?));
    }

    [Theory]
    [EveryEngine]
    public async Task A_picture_that_has_not_come_yet_is_a_notice(Engine engine)
    {
        StoreLocation location = await FilledAsync(engine);
        await ChangeAsync(location, "DELETE FROM blobs");

        StoreReport report = await StoreCheck.RunAsync(location, cancellation: Cancellation);

        StoreFinding only = Assert.Single(report.Findings);
        Assert.Equal((FindingWeight.Notice, "other", 3L), (only.Weight, only.Club, only.Number));
        Assert.True(report.IsSound);
    }

    [Theory]
    [EveryEngine]
    public async Task All_findings_are_counted_and_the_first_are_listed(Engine engine)
    {
        StoreLocation location = await FilledAsync(engine);
        await ChangeAsync(location, "UPDATE entries SET \"Member\" = 'm2'");

        StoreReport report = await StoreCheck.RunAsync(location, 10, Cancellation);

        Assert.Equal((10, 1203), (report.Findings.Count, report.Faults));
    }

    [Fact]
    public async Task A_file_that_was_cut_short_is_found()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite);
        await SettleAsync(location);
        using (FileStream file = File.OpenWrite(location.Name))
        {
            file.SetLength(file.Length / 2);
        }

        Assert.False((await StoreCheck.RunAsync(location, cancellation: Cancellation)).IsSound);
    }

    [Fact]
    public async Task A_byte_turned_over_in_any_entry_of_the_file_is_found()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite);
        await SettleAsync(location);
        byte[] whole = await File.ReadAllBytesAsync(location.Name, Cancellation);
        for (int number = 100; number <= 1100; number += 100)
        {
            byte[] body = Encoding.UTF8.GetBytes($"\"b{number}\"");
            int at = whole.AsSpan().IndexOf(body);
            Assert.True(at > 0);
            byte[] turned = [.. whole];
            turned[at + 1] ^= 1;
            var copy = StoreLocation.File(Path.Combine(stores.NewFolder(), "gatewright.db"));
            await File.WriteAllBytesAsync(copy.Name, turned, Cancellation);

            StoreReport report = await StoreCheck.RunAsync(copy, cancellation: Cancellation);

            Assert.Equal([number], report.Findings.Select(f => f.Number ?? 0));
        }
    }

    [Fact]
    public async Task Pages_that_were_overwritten_are_found_and_the_rest_is_still_looked_at()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite);
        await SettleAsync(location);
        byte[] whole = await File.ReadAllBytesAsync(location.Name, Cancellation);
        Array.Fill(whole, (byte)0xAA, whole.Length / 2 / 4096 * 4096, 4096);
        await File.WriteAllBytesAsync(location.Name, whole, Cancellation);

        StoreReport report = await StoreCheck.RunAsync(location, cancellation: Cancellation);

        Assert.False(report.IsSound);
        Assert.Equal(2, report.Clubs);
    }

    [Fact]
    public async Task A_store_that_is_not_there_is_told_and_not_made()
    {
        StoreLocation location = await stores.PlaceAsync(Engine.Sqlite);

        StoreException said = await Assert.ThrowsAsync<StoreException>(() => StoreCheck.RunAsync(location, cancellation: Cancellation));

        Assert.Equal(StoreFault.Missing, said.Fault);
        Assert.False(File.Exists(location.Name));
    }

    private async Task<StoreReport> FoundAsync(Engine engine, string change, params long?[] numbers)
    {
        StoreLocation location = await FilledAsync(engine);
        await ChangeAsync(location, change);

        StoreReport report = await StoreCheck.RunAsync(location, cancellation: Cancellation);

        Assert.Equal(numbers, report.Findings.Select(f => f.Number));
        Assert.All(report.Findings, f => Assert.Equal(FindingWeight.Fault, f.Weight));
        Assert.All(report.Findings, f => Assert.True(f.What.EndsWith('.') && f.Remedy.EndsWith('.'), f.ToString()));
        return report;
    }

    /// <summary>Club "club" with 1200 entries, club "other" with 2, and a third that takes a picture.</summary>
    private async Task<StoreLocation> FilledAsync(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        byte[] picture = Pictures.Jpeg(1);
        (string kind, int version, byte[] body) =
            FactKinds.Write(new PhotoTaken("boat", "b1", Pictures.Hash(picture), picture.Length, "image/jpeg"));
        Entry like = Made.Entry(3, "other");
        Entry photo = new()
        {
            Id = like.Id, Club = like.Club, Member = like.Member, Device = like.Device, Time = like.Time,
            Kind = kind, Version = version, Body = body,
        };
        var journal = new JournalStore(location);
        await journal.AppendAsync("club", Made.Entries(1, 1200), Cancellation);
        await journal.AppendAsync("other", [.. Made.Entries(1, 2, "other"), photo], Cancellation);
        await new BlobStore(location).PutAsync("other", Pictures.Hash(picture), picture, Cancellation);
        return location;
    }

    private static async Task ChangeAsync(StoreLocation location, string sql)
    {
        await using StoreDb db = location.Open();
        await db.Database.OpenConnectionAsync(Cancellation);
        await using System.Data.Common.DbCommand command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        Assert.NotEqual(0, await command.ExecuteNonQueryAsync(Cancellation));
    }

    /// <summary>Writes the log into the file and lets go of both.</summary>
    private static async Task SettleAsync(StoreLocation location)
    {
        await using (var connection = new SqliteConnection(location.ConnectionString))
        {
            await connection.OpenAsync(Cancellation);
            SqliteCommand command = connection.CreateCommand();
            command.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
            await command.ExecuteNonQueryAsync(Cancellation);
            SqliteConnection.ClearPool(connection);
        }
    }
}
