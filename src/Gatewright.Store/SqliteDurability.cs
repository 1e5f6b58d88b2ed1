using System.Data.Common;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Gatewright.Store;

/// <summary>
/// Sets each SQLite connection so that what was acknowledged survives: a write-ahead log, flushed at every commit.
/// </summary>
internal sealed class SqliteDurability : DbConnectionInterceptor
{
    public static SqliteDurability Instance { get; } = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using DbCommand command = Pragmas(connection);
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using DbCommand command = Pragmas(connection);
        await command.ExecuteNonQueryAsync(cancellationToken).ConfigureAwait(false);
    }

    private static DbCommand Pragmas(DbConnection connection)
    {
        DbCommand command = connection.CreateCommand();
        command.CommandText = string.Create(
            CultureInfo.InvariantCulture,
            $"PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA busy_timeout = {WaitOf(connection).TotalMilliseconds:0};");
        return command;
    }

    /// <summary>How long somebody waits who finds the store held: the place says it. The driver's own waiting ends only between two tries of the engine's.</summary>
    private static TimeSpan WaitOf(DbConnection connection) => TimeSpan.FromSeconds(((SqliteConnection)connection).DefaultTimeout);
}
