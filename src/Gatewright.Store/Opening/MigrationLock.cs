using Gatewright.Store.Faults;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Gatewright.Store.Opening;

/// <summary>Keeps others from changing a store's tables; goes with the process that holds it, however it ends.</summary>
/// <remarks>
/// What Entity Framework Core does itself is not enough. On SQLite it leaves a row behind when a program is killed,
/// and every later one waits for it for ever; on PostgreSQL it locks a table that two programs may be making at once.
/// </remarks>
internal static class MigrationLock
{
    /// <summary>Any number will do that no other program over the same database uses: "gatewrt" in ASCII.</summary>
    private const long Key = 0x67617465777274;

    private static readonly TimeSpan Wait = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    public static async Task<IAsyncDisposable> TakeAsync(StoreLocation location, CancellationToken cancellation) =>
        location.Engine == Engine.Sqlite
            ? await LockFileAsync(location, cancellation).ConfigureAwait(false)
            : await LockServerAsync(location, cancellation).ConfigureAwait(false);

    private static async Task<FileStream> LockFileAsync(StoreLocation location, CancellationToken cancellation)
    {
        for (DateTime until = DateTime.UtcNow + Wait; ;)
        {
            try
            {
                var held = new FileStream(location.Name + ".opening", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
                await DropAbandonedAsync(location, cancellation).ConfigureAwait(false);
                return held;
            }
            catch (IOException) when (DateTime.UtcNow < until)
            {
                await Task.Delay(Pause, cancellation).ConfigureAwait(false);
            }
            catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
            {
                throw new StoreException(
                    StoreFault.ReadOnly, $"The store {location.Name} cannot be locked: {thrown.Message}",
                    "See that no other program is still opening it and that this program's user may write its folder.", thrown);
            }
        }
    }

    private static async Task DropAbandonedAsync(StoreLocation location, CancellationToken cancellation)
    {
        await using var connection = new SqliteConnection(location.ConnectionString);
        await connection.OpenAsync(cancellation).ConfigureAwait(false);
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT count(*) FROM sqlite_master WHERE name = '__EFMigrationsLock'";
        if (await command.ExecuteScalarAsync(cancellation).ConfigureAwait(false) is > 0L)
        {
            command.CommandText = "DELETE FROM \"__EFMigrationsLock\"";
            await command.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
        }
    }

    private static async Task<NpgsqlConnection> LockServerAsync(StoreLocation location, CancellationToken cancellation)
    {
        // Not from the pool: the lock belongs to the session and goes when the connection is closed.
        var connection = new NpgsqlConnection(
            new NpgsqlConnectionStringBuilder(location.ConnectionString) { Pooling = false }.ConnectionString);
        try
        {
            await connection.OpenAsync(cancellation).ConfigureAwait(false);
            await using NpgsqlCommand command = connection.CreateCommand();
            command.CommandTimeout = (int)Wait.TotalSeconds;
            command.CommandText = $"SELECT pg_advisory_lock({Key.ToString(System.Globalization.CultureInfo.InvariantCulture)})";
            await command.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
            return connection;
        }
        catch
        {
            await connection.DisposeAsync().ConfigureAwait(false);
            throw;
        }
    }
}
