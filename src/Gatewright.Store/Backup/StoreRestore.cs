using System.Data.Common;
using System.Globalization;
using System.Text.Json;
using Gatewright.Store.Checking;
using Gatewright.Store.Faults;
using Gatewright.Store.Opening;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Gatewright.Store.Backup;

/// <summary>Puts a backup into an empty store, whole or not at all.</summary>
public static class StoreRestore
{
    /// <summary>
    /// Makes the store if there is none, fills it from the backup, looks it through, and only then commits.
    /// </summary>
    /// <param name="path">The backup.</param>
    /// <param name="location">Where to; whichever engine the backup came from.</param>
    /// <param name="cancellation">Stops it; nothing is restored then.</param>
    /// <returns>What was looked at.</returns>
    /// <exception cref="StoreException">
    /// The backup cannot be read, is damaged or has faults in it, or the store is not empty. It is as it was then.
    /// </exception>
    public static Task<StoreReport> RunAsync(string path, StoreLocation location, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(location);
        return Translation.RunAsync(location, async () =>
        {
            await using BackupReader backup = await BackupReader.OpenAsync(path, cancellation).ConfigureAwait(false);
            await StoreOpening.OpenAsync(location, cancellation).ConfigureAwait(false);
            await using StoreDb db = location.Open();
            await db.Database.OpenConnectionAsync(cancellation).ConfigureAwait(false);
            await using DbTransaction transaction =
                await db.Database.GetDbConnection().BeginTransactionAsync(cancellation).ConfigureAwait(false);
            IReadOnlyList<BackupTable> tables = BackupTable.Of(db);
            await RefuseUnlessEmptyAsync(transaction, tables, location, cancellation).ConfigureAwait(false);
            foreach (BackupPart part in Ordered(backup, tables))
            {
                await FillAsync(transaction, tables.First(t => t.Name == part.Name), backup, part, location, cancellation).ConfigureAwait(false);
            }

            StoreReport report = await CheckAsync(transaction, path, location, cancellation).ConfigureAwait(false);
            await transaction.CommitAsync(cancellation).ConfigureAwait(false);
            return report;
        });
    }

    /// <summary>The backup's tables in the order they can be filled in; all of them must be known, and all be there.</summary>
    private static IEnumerable<BackupPart> Ordered(BackupReader backup, IReadOnlyList<BackupTable> tables)
    {
        Dictionary<string, BackupPart> parts = backup.Manifest.Tables.ToDictionary(p => p.Name);
        foreach (BackupPart part in backup.Manifest.Tables.Where(p => tables.All(t => t.Name != p.Name)))
        {
            throw backup.Broken(part, "this program has no such table");
        }

        return tables.Select(t => parts.TryGetValue(t.Name, out BackupPart? part)
            ? part
            : throw backup.Broken(new(t.Name, 0, string.Empty), "the table is not in it"));
    }

    private static async Task RefuseUnlessEmptyAsync(
        DbTransaction transaction, IReadOnlyList<BackupTable> tables, StoreLocation location, CancellationToken cancellation)
    {
        foreach (BackupTable table in tables)
        {
            if (location.Engine == Engine.Postgres)
            {
                // Nobody may put anything in between this look and the commit; SQLite's transaction sees to that itself.
                await using DbCommand hold = transaction.Command($"LOCK TABLE \"{table.Name}\" IN EXCLUSIVE MODE");
                await hold.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
            }

            await using DbCommand command = transaction.Command($"SELECT 1 FROM \"{table.Name}\" LIMIT 1");
            if (await command.ExecuteScalarAsync(cancellation).ConfigureAwait(false) is not null)
            {
                throw new StoreException(
                    StoreFault.NotEmpty, $"The store {location.Name} is not empty, and is left as it is.",
                    "Restore into a new folder or a new database.");
            }
        }
    }

    private static async Task FillAsync(
        DbTransaction transaction,
        BackupTable table,
        BackupReader backup,
        BackupPart part,
        StoreLocation location,
        CancellationToken cancellation)
    {
        await using DbCommand command = transaction.Command(table.Insert);
        for (int i = 0; i < table.Columns.Count; i++)
        {
            command.Add($"@p{i}", DBNull.Value);
            if (command.Parameters[i] is NpgsqlParameter parameter)
            {
                parameter.DataTypeName = table.Columns[i].StoreType;
            }
        }

        long number = 0;
        await foreach (JsonElement row in backup.RowsAsync(part, cancellation).ConfigureAwait(false))
        {
            number++;
            try
            {
                Take(command, table, row);
                await command.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
            }
            catch (Exception thrown) when (thrown is InvalidOperationException or FormatException or KeyNotFoundException or DbException
                && Translation.Of(thrown, location) is null)
            {
                throw backup.Broken(part, $"row {number} does not fit: {thrown.Message.TrimEnd('.')}", thrown);
            }
        }

        await CountOnAsync(transaction, table, cancellation).ConfigureAwait(false);
    }

    private static void Take(DbCommand command, BackupTable table, JsonElement row)
    {
        if (row.EnumerateObject().Select(p => p.Name).FirstOrDefault(name => table.Columns.All(c => c.Name != name)) is { } stray)
        {
            throw new FormatException($"this program has no column {stray}");
        }

        for (int i = 0; i < table.Columns.Count; i++)
        {
            command.Parameters[i].Value = table.Columns[i].Read(row.GetProperty(table.Columns[i].Name));
        }
    }

    /// <summary>PostgreSQL goes on counting from where it was, which is 1, whatever was put in.</summary>
    private static async Task CountOnAsync(DbTransaction transaction, BackupTable table, CancellationToken cancellation)
    {
        foreach (BackupColumn column in table.Columns.Where(c => c.IsCounted && transaction is NpgsqlTransaction))
        {
            await using DbCommand command = transaction.Command(
                $"SELECT setval(pg_get_serial_sequence('\"{table.Name}\"', '{column.Name}'), "
                + $"(SELECT coalesce(max(\"{column.Name}\"), 0) + 1 FROM \"{table.Name}\"), false)");
            await command.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
        }
    }

    private static async Task<StoreReport> CheckAsync(
        DbTransaction transaction, string path, StoreLocation location, CancellationToken cancellation)
    {
        var findings = new FindingList(StoreCheck.UsualMost);
        await StoreCheck.RunAsync(transaction, location, findings, cancellation).ConfigureAwait(false);
        StoreReport report = findings.Report;
        return report.IsSound
            ? report
            : throw new StoreException(
                StoreFault.Damaged,
                string.Create(CultureInfo.InvariantCulture, $"What is in the backup {path} has {report.Faults} faults. {report.Findings.FirstOrDefault(f => f.Weight == FindingWeight.Fault)?.What}"),
                "Take an older backup; nothing was changed.");
    }
}
