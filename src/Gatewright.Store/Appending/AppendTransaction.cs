using System.Data.Common;
using Gatewright.Journal.Entries;

namespace Gatewright.Store.Appending;

/// <summary>One append, inside its transaction.</summary>
internal sealed class AppendTransaction(Dialect dialect, DbTransaction transaction, string club)
{
    /// <summary>Ids asked after in a statement: more gains nothing.</summary>
    private const int Ids = 2000;

    public async Task<IReadOnlyList<long>> RunAsync(IReadOnlyList<Entry> entries, CancellationToken cancellation)
    {
        (long last, byte[] head) = await LockAsync(cancellation).ConfigureAwait(false);
        Dictionary<Guid, long> known = await KnownAsync(entries, cancellation).ConfigureAwait(false);
        var fresh = new List<FreshEntry>();
        foreach (Entry entry in entries)
        {
            if (known.TryAdd(entry.Id, last + 1))
            {
                head = HashChain.Next(head, entry);
                fresh.Add(new(++last, entry, head));
            }
        }

        if (fresh.Count > 0)
        {
            await dialect.Insert(transaction, club, fresh, cancellation).ConfigureAwait(false);
            await MoveHeadAsync(last, head, cancellation).ConfigureAwait(false);
        }

        return [.. entries.Select(e => known[e.Id])];
    }

    private async Task<(long Last, byte[] Head)> LockAsync(CancellationToken cancellation)
    {
        await using DbCommand create = transaction.Command(Dialect.CreateClub);
        create.Add("@club", club);
        create.Add("@head", HashChain.Start);
        await create.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
        await using DbCommand read = transaction.Command(dialect.LockClub);
        read.Add("@club", club);
        await using DbDataReader reader = await read.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
        await reader.ReadAsync(cancellation).ConfigureAwait(false);
        return (reader.GetInt64(0), (byte[])reader.GetValue(1));
    }

    /// <summary>The numbers of those entries that the journal has; throws where it has another under the same id.</summary>
    private async Task<Dictionary<Guid, long>> KnownAsync(IReadOnlyList<Entry> entries, CancellationToken cancellation)
    {
        var known = new Dictionary<Guid, long>();
        Dictionary<Guid, Entry> given = [];
        foreach (Entry entry in entries)
        {
            if (!given.TryAdd(entry.Id, entry) && !Same(given[entry.Id], entry))
            {
                throw new EntryConflictException(entry.Id);
            }
        }

        foreach (Guid[] ids in given.Keys.Chunk(Ids))
        {
            await using DbCommand command = transaction.Command(
                "SELECT \"Id\", \"Number\", \"Member\", \"Device\", \"Milliseconds\", \"Counter\", \"Kind\", \"Version\", \"Body\" "
                + "FROM entries WHERE \"Club\" = @club AND " + dialect.InList("\"Id\""));
            command.Add("@club", club);
            command.Add("@list", dialect.List(ids));
            await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
            while (await reader.ReadAsync(cancellation).ConfigureAwait(false))
            {
                Guid id = reader.GetGuid(0);
                if (!Same(given[id], reader))
                {
                    throw new EntryConflictException(id);
                }

                known.Add(id, reader.GetInt64(1));
            }
        }

        return known;
    }

    private static bool Same(Entry one, Entry other) =>
        EntryJson.ToLine(one).AsSpan().SequenceEqual(EntryJson.ToLine(other));

    private static bool Same(Entry entry, DbDataReader row) =>
        entry.Member == row.GetString(2)
        && entry.Device == row.GetString(3)
        && entry.Time == new HybridTime(row.GetInt64(4), row.GetInt32(5))
        && entry.Kind == row.GetString(6)
        && entry.Version == row.GetInt32(7)
        && entry.Body.Span.SequenceEqual((byte[])row.GetValue(8));

    private async Task MoveHeadAsync(long last, byte[] head, CancellationToken cancellation)
    {
        await using DbCommand command = transaction.Command("UPDATE clubs SET \"Last\" = @last, \"Head\" = @head WHERE \"Club\" = @club");
        command.Add("@last", last);
        command.Add("@head", head);
        command.Add("@club", club);
        await command.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
    }
}
