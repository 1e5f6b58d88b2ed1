using System.Data.Common;
using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Snapshots;

/// <summary>One snapshot of each club, the furthest that was put. Holds no state of its own.</summary>
public sealed class SnapshotStore(StoreLocation location)
{
    /// <summary>Number and bytes of a club's snapshot, and the hash of the entry under that number where there is one.</summary>
    internal const string Select =
        "SELECT s.\"Number\", s.\"Bytes\", e.\"Hash\" FROM snapshots s "
        + "LEFT JOIN entries e ON e.\"Club\" = s.\"Club\" AND e.\"Number\" = s.\"Number\" WHERE s.\"Club\" = @club";

    private const string Hash = "SELECT \"Hash\" FROM entries WHERE \"Club\" = @club AND \"Number\" = @number";

    private const string Put =
        "INSERT INTO snapshots (\"Club\", \"Number\", \"Bytes\") VALUES (@club, @number, @bytes) "
        + "ON CONFLICT (\"Club\") DO UPDATE SET \"Number\" = excluded.\"Number\", \"Bytes\" = excluded.\"Bytes\" "
        + "WHERE excluded.\"Number\" > snapshots.\"Number\"";

    private const string Drop = "DELETE FROM snapshots WHERE \"Club\" = @club AND \"Number\" = @number";

    /// <summary>The snapshot of a club; null when there is none.</summary>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<KeptSnapshot?> GetAsync(string club, CancellationToken cancellation = default) => RunAsync(
        async connection =>
        {
            await using DbCommand command = connection.CreateCommand();
            command.CommandText = Select;
            command.Add("@club", club);
            await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
            if (!await reader.ReadAsync(cancellation).ConfigureAwait(false))
            {
                return null;
            }

            object kept = reader.GetValue(1);
            return new KeptSnapshot(reader.GetInt64(0), Tie.Holds(kept, reader.GetValue(2)) ? Tie.After((byte[])kept) : null);
        },
        cancellation);

    /// <summary>Keeps a snapshot in place of the one before, unless that one goes as far.</summary>
    /// <param name="club">The club.</param>
    /// <param name="number">The number of the last entry in it.</param>
    /// <param name="write">Writes it.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>Whether it was kept: not where the one before goes as far, nor where the journal has no such entry.</returns>
    /// <exception cref="StoreException">The store cannot take it.</exception>
    public Task<bool> PutAsync(string club, long number, Action<Stream> write, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(write);
        return RunAsync(
            async connection =>
            {
                if (await HashAsync(connection, club, number, cancellation).ConfigureAwait(false) is not { } hash)
                {
                    return false;
                }

                await using DbCommand command = connection.CreateCommand();
                command.CommandText = Put;
                command.Add("@club", club);
                command.Add("@number", number);
                command.Add("@bytes", Bytes(hash, write));
                return await command.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false) > 0;
            },
            cancellation);
    }

    /// <summary>Throws a snapshot away; one that was put since, of another number, stays.</summary>
    /// <exception cref="StoreException">The store cannot be written.</exception>
    public Task DropAsync(string club, long number, CancellationToken cancellation = default) => RunAsync(
        async connection =>
        {
            await using DbCommand command = connection.CreateCommand();
            command.CommandText = Drop;
            command.Add("@club", club);
            command.Add("@number", number);
            return await command.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
        },
        cancellation);

    private static async Task<byte[]?> HashAsync(
        DbConnection connection, string club, long number, CancellationToken cancellation)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = Hash;
        command.Add("@club", club);
        command.Add("@number", number);
        return (byte[]?)await command.ExecuteScalarAsync(cancellation).ConfigureAwait(false);
    }

    private static byte[] Bytes(byte[] hash, Action<Stream> write)
    {
        using var stream = new MemoryStream();
        stream.Write(hash);
        write(stream);
        return stream.ToArray();
    }

    private Task<T> RunAsync<T>(Func<DbConnection, Task<T>> call, CancellationToken cancellation) => Translation.RunAsync(
        location,
        async () =>
        {
            await using StoreDb db = location.Open();
            await db.Database.OpenConnectionAsync(cancellation).ConfigureAwait(false);
            return await call(db.Database.GetDbConnection()).ConfigureAwait(false);
        });
}
