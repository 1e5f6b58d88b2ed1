using System.Data.Common;
using Gatewright.Journal.Entries;
using Npgsql;
using NpgsqlTypes;

namespace Gatewright.Store.Appending;

/// <summary>Entries in PostgreSQL's binary form, in one stream.</summary>
internal static class PostgresImport
{
    private const string Sql =
        "COPY entries (\"Club\", \"Number\", \"Id\", \"Member\", \"Device\", \"Milliseconds\", \"Counter\", "
        + "\"Kind\", \"Version\", \"Body\", \"Hash\") FROM STDIN (FORMAT BINARY)";

    public static async Task RunAsync(
        DbTransaction transaction, string club, IReadOnlyList<FreshEntry> entries, CancellationToken cancellation)
    {
        var connection = (NpgsqlConnection)transaction.Connection!;
        await using NpgsqlBinaryImporter import = await connection.BeginBinaryImportAsync(Sql, cancellation).ConfigureAwait(false);
        foreach ((long number, Entry entry, byte[] hash) in entries)
        {
            await import.StartRowAsync(cancellation).ConfigureAwait(false);
            await import.WriteAsync(club, NpgsqlDbType.Varchar, cancellation).ConfigureAwait(false);
            await import.WriteAsync(number, NpgsqlDbType.Bigint, cancellation).ConfigureAwait(false);
            await import.WriteAsync(entry.Id, NpgsqlDbType.Uuid, cancellation).ConfigureAwait(false);
            await import.WriteAsync(entry.Member, NpgsqlDbType.Varchar, cancellation).ConfigureAwait(false);
            await import.WriteAsync(entry.Device, NpgsqlDbType.Varchar, cancellation).ConfigureAwait(false);
            await import.WriteAsync(entry.Time.Milliseconds, NpgsqlDbType.Bigint, cancellation).ConfigureAwait(false);
            await import.WriteAsync(entry.Time.Counter, NpgsqlDbType.Integer, cancellation).ConfigureAwait(false);
            await import.WriteAsync(entry.Kind, NpgsqlDbType.Varchar, cancellation).ConfigureAwait(false);
            await import.WriteAsync(entry.Version, NpgsqlDbType.Integer, cancellation).ConfigureAwait(false);
            await import.WriteAsync(entry.Body, NpgsqlDbType.Bytea, cancellation).ConfigureAwait(false);
            await import.WriteAsync(hash, NpgsqlDbType.Bytea, cancellation).ConfigureAwait(false);
        }

        await import.CompleteAsync(cancellation).ConfigureAwait(false);
    }
}
