using System.Data.Common;
using Gatewright.Journal.Replay.Snapshots;
using Gatewright.Store.Snapshots;

namespace Gatewright.Store.Checking;

/// <summary>One club's snapshot: whether it can be gone on from. It is never the truth, so what is wrong with it is a notice.</summary>
internal static class SnapshotCheck
{
    private const string Remedy = "None is needed: the journal is replayed instead, and a new snapshot made, when the club is next opened.";

    public static async Task RunAsync(
        DbTransaction transaction, string club, FindingList findings, CancellationToken cancellation)
    {
        await using DbCommand command = transaction.Command(SnapshotStore.Select);
        command.Add("@club", club);
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
        if (await reader.ReadAsync(cancellation).ConfigureAwait(false)
            && Wrong(club, reader.GetInt64(0), reader.GetValue(1), reader.GetValue(2)) is { } wrong)
        {
            findings.Notice(club, null, wrong, Remedy);
        }
    }

    private static string? Wrong(string club, long number, object kept, object hash)
    {
        if (!Tie.Holds(kept, hash))
        {
            return $"The snapshot up to entry {number} is not of this journal.";
        }

        try
        {
            using Stream stream = Tie.After((byte[])kept);
            (string name, long last, int count) = ClubSnapshot.Look(stream);
            return name == club && last == number && count == number
                ? null
                : $"The snapshot up to entry {number} is of {count} entries of {name} up to {last}.";
        }
        catch (SnapshotException cannot)
        {
            return $"The snapshot up to entry {number} cannot be gone on from: {cannot.Message}";
        }
    }
}
