using Gatewright.Store.Faults;
using Gatewright.Store.Opening;
using Gatewright.Store.Schema;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Gatewright.Store.Tests.Opening;

public sealed class StoreOpeningTests(Stores stores)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [EveryEngine]
    public async Task Many_may_open_a_new_store_at_once(Engine engine)
    {
        StoreLocation location = await stores.PlaceAsync(engine);

        await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => StoreOpening.OpenAsync(location, Cancellation), Cancellation)));

        await using StoreDb db = location.Open();
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(Cancellation));
        await new JournalStore(location).AppendAsync("club", Made.Entries(1, 3), Cancellation);
    }

    [Theory]
    [EveryEngine]
    public async Task A_store_of_a_newer_program_is_refused_and_left_alone(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        await using StoreDb db = location.Open();
        await db.Database.ExecuteSqlRawAsync(
            "INSERT INTO \"__EFMigrationsHistory\" (\"MigrationId\", \"ProductVersion\") VALUES ('99990101000000_Later', '99')", Cancellation);

        StoreException said = await Assert.ThrowsAsync<StoreException>(() => StoreOpening.OpenAsync(location, Cancellation));

        Assert.Equal(StoreFault.Newer, said.Fault);
        Assert.StartsWith($"A newer Gatewright has written the store {location.Name}.", said.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_lock_of_a_program_that_was_killed_while_it_made_the_tables_holds_up_nobody()
    {
        StoreLocation location = await stores.PlaceAsync(Engine.Sqlite);
        await using (var connection = new SqliteConnection(location.ConnectionString))
        {
            await connection.OpenAsync(Cancellation);
            SqliteCommand command = connection.CreateCommand();
            command.CommandText = """
                CREATE TABLE "__EFMigrationsLock" ("Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY, "Timestamp" TEXT NOT NULL);
                INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-01-01 00:00:00+00:00');
                """;
            await command.ExecuteNonQueryAsync(Cancellation);
        }

        await StoreOpening.OpenAsync(location, Cancellation).WaitAsync(TimeSpan.FromMinutes(1), Cancellation);

        Assert.Equal(0, await new JournalStore(location).LastAsync("club", Cancellation));
    }

    [Fact]
    public async Task What_is_no_store_is_told_and_left_alone()
    {
        StoreLocation location = await stores.PlaceAsync(Engine.Sqlite);
        await File.WriteAllTextAsync(location.Name, string.Concat(Enumerable.Repeat("readings of pitch\n", 400)), Cancellation);
        byte[] before = await File.ReadAllBytesAsync(location.Name, Cancellation);

        StoreException said = await Assert.ThrowsAsync<StoreException>(() => StoreOpening.OpenAsync(location, Cancellation));

        Assert.Equal(StoreFault.NotAStore, said.Fault);
        Assert.Equal(before, await File.ReadAllBytesAsync(location.Name, Cancellation));
    }

    [Fact]
    public async Task A_folder_that_is_not_there_is_told()
    {
        StoreLocation location = StoreLocation.File(Path.Combine(stores.NewFolder(), "nowhere", "gatewright.db"));

        StoreException said = await Assert.ThrowsAsync<StoreException>(() => StoreOpening.OpenAsync(location, Cancellation));

        Assert.Equal(StoreFault.Missing, said.Fault);
        Assert.Contains(location.Name, said.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_the_server_does_not_have_is_told()
    {
        StoreLocation location = Changed(await stores.NewAsync(Engine.Postgres), c => c.Database = "nowhere");

        StoreException said = await Assert.ThrowsAsync<StoreException>(() => StoreOpening.OpenAsync(location, Cancellation));

        Assert.Equal(StoreFault.Missing, said.Fault);
    }

    [Fact]
    public async Task A_user_the_server_does_not_have_is_told_without_the_password()
    {
        StoreLocation location = Changed(
            await stores.NewAsync(Engine.Postgres), c => (c.Username, c.Password) = ("nobody", "hidden"));

        StoreException said = await Assert.ThrowsAsync<StoreException>(() => StoreOpening.OpenAsync(location, Cancellation));

        Assert.Equal(StoreFault.Refused, said.Fault);
        Assert.DoesNotContain("hidden", said.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_server_that_is_not_there_may_be_there_later()
    {
        StoreLocation location = Changed(await stores.NewAsync(Engine.Postgres), c => c.Port = 1);

        StoreUnavailableException said =
            await Assert.ThrowsAsync<StoreUnavailableException>(() => StoreOpening.OpenAsync(location, Cancellation));

        Assert.Equal(StoreFault.Unreachable, said.Fault);
        Assert.True(said.RetryAfter > TimeSpan.Zero);
    }

    private static StoreLocation Changed(StoreLocation location, Action<NpgsqlConnectionStringBuilder> change)
    {
        var builder = new NpgsqlConnectionStringBuilder(location.ConnectionString);
        change(builder);
        return StoreLocation.Server(builder.ConnectionString);
    }
}
