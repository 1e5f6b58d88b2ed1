using System.Data.Common;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;

namespace Gatewright.Store.Checking;

/// <summary>One club's journal: numbers without a gap, entries that can be read, a whole chain of hashes.</summary>
internal sealed class JournalCheck(DbTransaction transaction, string club, FindingList findings)
{
    private const int Page = 500;

    private const string Sql =
        $"SELECT {EntryRow.Columns}, \"Hash\" FROM entries WHERE \"Club\" = @club AND \"Number\" > @after ORDER BY \"Number\" LIMIT @most";

    private long _number;
    private byte[] _hash = HashChain.Start;

    public static async Task RunAsync(
        DbTransaction transaction, string club, long last, byte[] head, FindingList findings, CancellationToken cancellation)
    {
        var check = new JournalCheck(transaction, club, findings);
        while (await check.PageAsync(cancellation).ConfigureAwait(false))
        {
        }

        check.Close(last, head);
    }

    /// <summary>In pages, so that pictures can be asked after between them: one connection reads one thing at a time.</summary>
    private async Task<bool> PageAsync(CancellationToken cancellation)
    {
        var photos = new List<(long Number, string Sha256)>();
        int rows = 0;
        await using (DbCommand command = transaction.Command(Sql))
        {
            command.Add("@club", club);
            command.Add("@after", _number);
            command.Add("@most", Page);
            await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
            while (await reader.ReadAsync(cancellation).ConfigureAwait(false))
            {
                rows++;
                Take(reader, photos);
            }
        }

        foreach ((long number, string sha256) in photos)
        {
            await using DbCommand command = transaction.Command("SELECT 1 FROM blobs WHERE \"Club\" = @club AND \"Sha256\" = @sha256");
            command.Add("@club", club);
            command.Add("@sha256", sha256);
            if (await command.ExecuteScalarAsync(cancellation).ConfigureAwait(false) is null)
            {
                findings.Notice(
                    club, number, $"The picture {sha256} of this entry is not there.",
                    "It comes once the device that took it has sent it; if that device is gone, the entry still stands.");
            }
        }

        return rows == Page;
    }

    private void Take(DbDataReader row, List<(long Number, string Sha256)> photos)
    {
        long number = row.GetInt64(0);
        bool follows = number == _number + 1;
        if (!follows)
        {
            findings.Fault(club, number, number == _number + 2
                ? $"Entry {number - 1} is missing."
                : $"Entries {_number + 1} to {number - 1} are missing.");
        }

        findings.Entries++;
        _number = number;
        byte[] kept;
        Entry entry;
        try
        {
            kept = (byte[])row.GetValue(9);
            entry = EntryRow.Of(club, row);
        }
        catch (Exception thrown) when (thrown is InvalidCastException or FormatException or OverflowException)
        {
            findings.Fault(club, number, $"The entry's row holds what cannot be in it: {thrown.Message}");
            return;
        }

        // After a gap there is nothing to hold the first hash to; from there on the chain is looked at again.
        if (follows && !HashChain.Next(_hash, entry).AsSpan().SequenceEqual(kept))
        {
            findings.Fault(club, number, "The entry or its place is not as it was written: its hash does not follow from the one before.");
        }

        _hash = kept;
        Read(number, entry, photos);
    }

    private void Read(long number, Entry entry, List<(long Number, string Sha256)> photos)
    {
        if (EntryJson.Read(EntryJson.ToLine(entry), out IReadOnlyList<string> problems) is null)
        {
            findings.Fault(club, number, $"The entry cannot be read: {string.Join("; ", problems)}.");
        }
        else if (FactKinds.Read(entry, out string? problem) is PhotoTaken photo)
        {
            photos.Add((number, photo.Sha256));
        }
        else if (problem is not null)
        {
            findings.Fault(club, number, $"The entry cannot be read: {problem}");
        }
    }

    private void Close(long last, byte[] head)
    {
        if (_number < last)
        {
            findings.Fault(club, null, $"The journal ends with entry {_number}, where {last} were acknowledged.");
        }
        else if (_number > last)
        {
            findings.Fault(club, _number, $"The journal goes on to entry {_number}, where {last} were acknowledged.");
        }
        else if (!_hash.AsSpan().SequenceEqual(head))
        {
            findings.Fault(club, last, "The end of the chain of hashes is not the last entry's.");
        }
    }
}
