using System.Data.Common;
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
        using DbCommand command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = Pragmas;
        await command.ExecuteNonQueryAsync(cancellationToken).ConfigureAwait(false);
    }

    private const string Pragmas = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA busy_timeout = 30000;";
}
