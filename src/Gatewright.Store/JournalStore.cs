using System.Data.Common;
using System.Globalization;
using Gatewright.Journal.Entries;
using Gatewright.Store.Appending;
using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store;

/// <summary>Clubs' journals on a database: append, read on from a number. Holds no state of its own.</summary>
public sealed class JournalStore(StoreLocation location)
{
    private readonly Dialect _dialect = Dialect.Of(location.Engine);

    /// <summary>
    /// Appends the entries a club's journal lacks, all of them or, when it fails, none.
    /// </summary>
    /// <remarks>
    /// The club's row is locked until the commit, so numbers become visible in their order and a reader that has seen
    /// one has seen all before it. An entry the journal has keeps its number: appending again changes nothing.
    /// </remarks>
    /// <returns>The number of each entry, in the order given.</returns>
    /// <exception cref="EntryConflictException">The journal has another entry under the same id.</exception>
    /// <exception cref="StoreUnavailableException">It cannot be done now: try again with the same entries.</exception>
    /// <exception cref="StoreException">The store cannot take them; says why and what to do.</exception>
    public Task<IReadOnlyList<long>> AppendAsync(
        string club, IReadOnlyList<Entry> entries, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(entries);
        if (entries.FirstOrDefault(e => e.Club != club) is { } stray)
        {
            throw new ArgumentException($"Entry {stray.Id} is of club {stray.Club}, not of {club}.", nameof(entries));
        }

        return Translation.RunAsync(location, () => AppendCoreAsync(club, entries, cancellation));
    }

    private async Task<IReadOnlyList<long>> AppendCoreAsync(
        string club, IReadOnlyList<Entry> entries, CancellationToken cancellation)
    {
        await using StoreDb db = location.Open();
        await db.Database.OpenConnectionAsync(cancellation).ConfigureAwait(false);
        DbConnection connection = db.Database.GetDbConnection();
        await using DbTransaction transaction = await connection.BeginTransactionAsync(cancellation).ConfigureAwait(false);
        var append = new AppendTransaction(_dialect, transaction, club);
        IReadOnlyList<long> numbers = await append.RunAsync(entries, cancellation).ConfigureAwait(false);
        await transaction.CommitAsync(cancellation).ConfigureAwait(false);
        return numbers;
    }

    /// <summary>The entries after a number, in order.</summary>
    /// <param name="club">The club.</param>
    /// <param name="after">The number to go on from; 0 for all.</param>
    /// <param name="most">The most to return.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<IReadOnlyList<Numbered>> ReadAsync(
        string club, long after, int most, CancellationToken cancellation = default) =>
        Translation.RunAsync(location, () => ReadCoreAsync(club, after, most, cancellation));

    /// <summary>The number of a club's latest entry; 0 when it has none.</summary>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<long> LastAsync(string club, CancellationToken cancellation = default) =>
        Translation.RunAsync(location, async () =>
        {
            await using StoreDb db = location.Open();
            return await db.Clubs.Where(c => c.Club == club).Select(c => c.Last).FirstOrDefaultAsync(cancellation).ConfigureAwait(false);
        });

    private async Task<IReadOnlyList<Numbered>> ReadCoreAsync(
        string club, long after, int most, CancellationToken cancellation)
    {
        await using StoreDb db = location.Open();
        await db.Database.OpenConnectionAsync(cancellation).ConfigureAwait(false);
        await using DbCommand command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText =
            $"SELECT {EntryRow.Columns} FROM entries WHERE \"Club\" = @club AND \"Number\" > @after AND \"Number\" <= @last ORDER BY \"Number\"";
        command.Add("@club", club);
        command.Add("@after", after);

        // Numbers have no gaps, so their range is as good as a count; a count leaves a planner that knows nothing of the
        // table yet to read and sort all that follows.
        command.Add("@last", after + most);
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
        var entries = new List<Numbered>();
        while (await reader.ReadAsync(cancellation).ConfigureAwait(false))
        {
            var row = new Numbered(reader.GetInt64(0), EntryRow.Of(club, reader));
            entries.Add(row.Number == after + entries.Count + 1 ? row : throw Missing(club, after + entries.Count + 1));
        }

        return entries;
    }

    private static StoreException Missing(string club, long number) => new(
        StoreFault.Damaged,
        string.Create(CultureInfo.InvariantCulture, $"Entry {number} of club {club} is missing, and later ones are there."),
        "Keep the store as it is, look it through with gatewright club verify, and restore a backup elsewhere.");
}
