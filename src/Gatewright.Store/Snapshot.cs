using System.Data;
using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Gatewright.Store;

/// <summary>A transaction that sees the store as it was at one moment, and holds up nobody.</summary>
internal static class Snapshot
{
    public static async Task<DbTransaction> BeginAsync(DbConnection connection, CancellationToken cancellation) =>
        connection is SqliteConnection sqlite
            ? sqlite.BeginTransaction(deferred: true)
            : await connection.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancellation).ConfigureAwait(false);
}
