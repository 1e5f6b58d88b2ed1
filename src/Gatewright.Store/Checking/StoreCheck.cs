using System.Data.Common;
using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Checking;

/// <summary>Looks through a store for anything that is not as it was written. Changes nothing; others may go on working.</summary>
public static class StoreCheck
{
    /// <summary>Findings that are listed unless another number is asked for: 1000.</summary>
    public const int UsualMost = 1000;

    /// <summary>Looks through all clubs, in memory that grows with its longest snapshot alone.</summary>
    /// <param name="location">The store.</param>
    /// <param name="most">Findings to list, at most; all are counted.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="StoreException">There is no store there, or it cannot be read at all for another reason than damage.</exception>
    public static Task<StoreReport> RunAsync(
        StoreLocation location, int most = UsualMost, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(location);
        if (location.Engine == Engine.Sqlite && !File.Exists(location.Name))
        {
            throw new StoreException(
                StoreFault.Missing, $"There is no store {location.Name}.", "Name the folder it is in.");
        }

        return Translation.RunAsync(location, async () =>
        {
            var findings = new FindingList(most);
            await Damage.NoteAsync(findings, location, null, async () =>
            {
                await using StoreDb db = location.Open();
                await db.Database.OpenConnectionAsync(cancellation).ConfigureAwait(false);
                await using DbTransaction transaction =
                    await Snapshot.BeginAsync(db.Database.GetDbConnection(), cancellation).ConfigureAwait(false);
                await RunAsync(transaction, location, findings, cancellation).ConfigureAwait(false);
            }).ConfigureAwait(false);
            return findings.Report;
        });
    }

    /// <summary>Looks at what a transaction sees.</summary>
    internal static async Task RunAsync(
        DbTransaction transaction, StoreLocation location, FindingList findings, CancellationToken cancellation)
    {
        if (location.Engine == Engine.Sqlite)
        {
            await Damage.NoteAsync(findings, location, null, () => IntegrityAsync(transaction, findings, cancellation))
                .ConfigureAwait(false);
        }

        await Damage.NoteAsync(findings, location, null, async () =>
        {
            List<(string Club, long Last, byte[] Head)> clubs = await ClubsAsync(transaction, cancellation).ConfigureAwait(false);
            foreach ((string club, long last, byte[] head) in clubs)
            {
                findings.Clubs++;
                await Damage.NoteAsync(findings, location, club, () => JournalCheck.RunAsync(transaction, club, last, head, findings, cancellation))
                    .ConfigureAwait(false);
                await Damage.NoteAsync(findings, location, club, () => PictureCheck.RunAsync(transaction, club, findings, cancellation))
                    .ConfigureAwait(false);
                await Damage.NoteAsync(findings, location, club, () => SnapshotCheck.RunAsync(transaction, club, findings, cancellation))
                    .ConfigureAwait(false);
            }
        }).ConfigureAwait(false);
        await Damage.NoteAsync(findings, location, null, () => TieCheck.RunAsync(transaction, findings, cancellation)).ConfigureAwait(false);
    }

    private static async Task<List<(string Club, long Last, byte[] Head)>> ClubsAsync(
        DbTransaction transaction, CancellationToken cancellation)
    {
        await using DbCommand command = transaction.Command("SELECT \"Club\", \"Last\", \"Head\" FROM clubs ORDER BY \"Club\"");
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
        var clubs = new List<(string, long, byte[])>();
        while (await reader.ReadAsync(cancellation).ConfigureAwait(false))
        {
            clubs.Add((reader.GetString(0), reader.GetInt64(1), (byte[])reader.GetValue(2)));
        }

        return clubs;
    }

    /// <summary>SQLite's own look at its file: pages, indexes, what is stored in the wrong type.</summary>
    private static async Task IntegrityAsync(DbTransaction transaction, FindingList findings, CancellationToken cancellation)
    {
        await using DbCommand command = transaction.Command("PRAGMA integrity_check");
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
        while (await reader.ReadAsync(cancellation).ConfigureAwait(false))
        {
            if (reader.GetString(0) is var said && said != "ok")
            {
                findings.Fault(null, null, $"The file is damaged: {said}.");
            }
        }
    }
}
