using Gatewright.Journal.Entries;
using Gatewright.Store;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Gatewright.Bench.Keeping;

/// <summary>The same rows put into the same table the fastest way the engine has, and nothing else: no numbers, no hashes, no look for repeats.</summary>
internal static class BareInserts
{
    private static readonly string[] Columns =
        ["Club", "Number", "Id", "Member", "Device", "Milliseconds", "Counter", "Kind", "Version", "Body", "Hash"];

    private static readonly byte[] Hash = new byte[32];

    public static void Run(StoreLocation location, Entry[][] batches)
    {
        long number = 0;
        if (location.Engine == Engine.Sqlite)
        {
            foreach (Entry[] batch in batches)
            {
                Sqlite(location, batch, ref number);
            }
        }
        else
        {
            foreach (Entry[] batch in batches)
            {
                Postgres(location, batch, ref number);
            }
        }
    }

    private static string Names => string.Join(", ", Columns.Select(c => $"\"{c}\""));

    private static object[] Row(Entry entry, long number) =>
        [entry.Club, number, entry.Id, entry.Member, entry.Device, entry.Time.Milliseconds, entry.Time.Counter, entry.Kind, entry.Version, entry.Body.ToArray(), Hash];

    private static void Sqlite(StoreLocation location, Entry[] batch, ref long number)
    {
        using var connection = new SqliteConnection(location.ConnectionString);
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "PRAGMA synchronous = FULL";
        command.ExecuteNonQuery();
        using SqliteTransaction transaction = connection.BeginTransaction();
        command.Transaction = transaction;
        command.CommandText = $"INSERT INTO entries ({Names}) VALUES ({string.Join(", ", Columns.Select(c => "@" + c))})";
        SqliteParameter[] parameters = [.. Columns.Select(c => command.Parameters.AddWithValue("@" + c, DBNull.Value))];
        command.Prepare();
        foreach (Entry entry in batch)
        {
            object[] row = Row(entry, ++number);
            for (int i = 0; i < row.Length; i++)
            {
                parameters[i].Value = row[i];
            }

            command.ExecuteNonQuery();
        }

        transaction.Commit();
    }

    private static void Postgres(StoreLocation location, Entry[] batch, ref long number)
    {
        using var connection = new NpgsqlConnection(location.ConnectionString);
        connection.Open();
        using NpgsqlBinaryImporter import = connection.BeginBinaryImport($"COPY entries ({Names}) FROM STDIN (FORMAT BINARY)");
        foreach (Entry entry in batch)
        {
            import.WriteRow(Row(entry, ++number));
        }

        import.Complete();
    }
}
