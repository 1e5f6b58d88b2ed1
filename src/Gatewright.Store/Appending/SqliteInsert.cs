using System.Data.Common;
using System.Runtime.InteropServices;
using Gatewright.Journal.Entries;
using Microsoft.Data.Sqlite;

namespace Gatewright.Store.Appending;

/// <summary>
/// One statement, prepared once and run for every entry. Many rows a statement is slower: the driver finds each
/// parameter by its name among all of them.
/// </summary>
internal static class SqliteInsert
{
    private const string Sql =
        "INSERT INTO entries (\"Club\", \"Number\", \"Id\", \"Member\", \"Device\", \"Milliseconds\", \"Counter\", "
        + "\"Kind\", \"Version\", \"Body\", \"Hash\") "
        + "VALUES (@club, @number, @id, @member, @device, @milliseconds, @counter, @kind, @version, @body, @hash)";

    private static readonly (string Name, SqliteType Type)[] Parameters =
    [
        ("@club", SqliteType.Text), ("@number", SqliteType.Integer), ("@id", SqliteType.Text), ("@member", SqliteType.Text),
        ("@device", SqliteType.Text), ("@milliseconds", SqliteType.Integer), ("@counter", SqliteType.Integer),
        ("@kind", SqliteType.Text), ("@version", SqliteType.Integer), ("@body", SqliteType.Blob), ("@hash", SqliteType.Blob),
    ];

    public static async Task RunAsync(
        DbTransaction transaction, string club, IReadOnlyList<FreshEntry> entries, CancellationToken cancellation)
    {
        await using SqliteCommand command = ((SqliteTransaction)transaction).Connection!.CreateCommand();
        command.Transaction = (SqliteTransaction)transaction;
        command.CommandText = Sql;
        SqliteParameter[] parameters = [.. Parameters.Select(p => command.Parameters.Add(p.Name, p.Type))];
        parameters[0].Value = club;
        await command.PrepareAsync(cancellation).ConfigureAwait(false);
        foreach ((long number, Entry entry, byte[] hash) in entries)
        {
            cancellation.ThrowIfCancellationRequested();
            parameters[1].Value = number;
            parameters[2].Value = entry.Id;
            parameters[3].Value = entry.Member;
            parameters[4].Value = entry.Device;
            parameters[5].Value = entry.Time.Milliseconds;
            parameters[6].Value = entry.Time.Counter;
            parameters[7].Value = entry.Kind;
            parameters[8].Value = entry.Version;
            parameters[9].Value = Bytes(entry.Body);
            parameters[10].Value = hash;
            await command.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
        }
    }

    /// <summary>The driver takes whole arrays only; a body mostly is one.</summary>
    private static byte[] Bytes(ReadOnlyMemory<byte> body) =>
        MemoryMarshal.TryGetArray(body, out ArraySegment<byte> part) && part.Offset == 0 && part.Count == part.Array!.Length
            ? part.Array
            : body.ToArray();
}
