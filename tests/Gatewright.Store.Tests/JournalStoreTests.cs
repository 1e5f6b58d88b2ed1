using Gatewright.Journal.Entries;
using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Tests;

public sealed class JournalStoreTests(Stores stores)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [EveryEngine]
    public async Task What_was_appended_is_read_back_to_the_byte_and_in_order(Engine engine)
    {
        var store = new JournalStore(await stores.NewAsync(engine));
        Entry[] given = Made.Entries(1, 450);

        IReadOnlyList<long> numbers = await store.AppendAsync("club", given, Cancellation);
        IReadOnlyList<Numbered> read = await store.ReadAsync("club", 0, 1000, Cancellation);

        Assert.Equal(Enumerable.Range(1, 450).Select(n => (long)n), numbers);
        Assert.Equal(numbers, read.Select(r => r.Number));
        Assert.Equal(given.Select(EntryJson.ToLine), read.Select(r => EntryJson.ToLine(r.Entry)));
    }

    [Theory]
    [EveryEngine]
    public async Task Appending_again_changes_nothing_and_gives_the_same_numbers(Engine engine)
    {
        var store = new JournalStore(await stores.NewAsync(engine));
        IReadOnlyList<long> first = await store.AppendAsync("club", Made.Entries(1, 10), Cancellation);

        IReadOnlyList<long> again = await store.AppendAsync("club", [.. Made.Entries(5, 10), Made.Entry(7)], Cancellation);

        Assert.Equal([.. first.Skip(4), 11, 12, 13, 14, 7], again);
        Assert.Equal(14, await store.LastAsync("club", Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task Reading_goes_on_from_a_number_in_pages(Engine engine)
    {
        var store = new JournalStore(await stores.NewAsync(engine));
        await store.AppendAsync("club", Made.Entries(1, 25), Cancellation);

        var seen = new List<long>();
        while (await store.ReadAsync("club", seen.LastOrDefault(), 10, Cancellation) is { Count: > 0 } page)
        {
            seen.AddRange(page.Select(p => p.Number));
        }

        Assert.Equal(Enumerable.Range(1, 25).Select(n => (long)n), seen);
    }

    [Theory]
    [EveryEngine]
    public async Task Another_entry_under_an_id_the_journal_has_is_refused_and_nothing_of_it_is_kept(Engine engine)
    {
        var store = new JournalStore(await stores.NewAsync(engine));
        await store.AppendAsync("club", [Made.Entry(1)], Cancellation);

        EntryConflictException refusal = await Assert.ThrowsAsync<EntryConflictException>(
            () => store.AppendAsync("club", [Made.Entry(2), Made.Entry(1, text: "forged")], Cancellation));

        Assert.Equal(Made.Entry(1).Id, refusal.Id);
        Assert.Equal(1, await store.LastAsync("club", Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task Clubs_do_not_see_each_others_entries_and_number_them_each_for_itself(Engine engine)
    {
        var store = new JournalStore(await stores.NewAsync(engine));
        await store.AppendAsync("one", Made.Entries(1, 3, "one"), Cancellation);
        IReadOnlyList<long> other = await store.AppendAsync("other", Made.Entries(1, 2, "other"), Cancellation);

        Assert.Equal([1, 2], other);
        Assert.All(await store.ReadAsync("other", 0, 100, Cancellation), n => Assert.Equal("other", n.Entry.Club));
        await Assert.ThrowsAsync<ArgumentException>(() => store.AppendAsync("one", Made.Entries(9, 1, "other"), Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task Many_writers_at_once_leave_no_gap_and_no_double(Engine engine)
    {
        var store = new JournalStore(await stores.NewAsync(engine));

        // Each writer also sends what its neighbour sends: half of all appends are repeats.
        await Task.WhenAll(Enumerable.Range(0, 8).Select(async writer =>
        {
            for (int batch = 0; batch < 5; batch++)
            {
                await store.AppendAsync("club", Made.Entries(1 + (writer / 2 * 100) + (batch * 10), 10), Cancellation);
            }
        }));

        IReadOnlyList<Numbered> all = await store.ReadAsync("club", 0, 1000, Cancellation);
        Assert.Equal(Enumerable.Range(1, 200).Select(n => (long)n), all.Select(n => n.Number));
        Assert.Equal(200, all.Select(n => n.Entry.Id).Distinct().Count());
    }

    [Theory]
    [EveryEngine]
    public async Task The_chain_of_hashes_is_that_of_the_entries(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        await new JournalStore(location).AppendAsync("club", Made.Entries(1, 5), Cancellation);

        byte[] expected = Made.Entries(1, 5).Aggregate(HashChain.Start, (before, entry) => HashChain.Next(before, entry));
        await using StoreDb db = location.Open();
        Assert.Equal(expected, (await db.Clubs.SingleAsync(Cancellation)).Head);
    }

    [Theory]
    [EveryEngine]
    public async Task The_tables_are_as_the_migrations_leave_them(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        await using StoreDb db = location.Open();

        Assert.False(db.Database.HasPendingModelChanges());
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task A_journal_with_an_entry_missing_is_not_read_over(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        var store = new JournalStore(location);
        await store.AppendAsync("club", Made.Entries(1, 10), Cancellation);
        await using (StoreDb db = location.Open())
        {
            await db.Entries.Where(e => e.Number == 4).ExecuteDeleteAsync(Cancellation);
        }

        StoreException thrown = await Assert.ThrowsAsync<StoreException>(() => store.ReadAsync("club", 0, 100, Cancellation));

        Assert.Equal(StoreFault.Damaged, thrown.Fault);
        Assert.Contains("Entry 4 of club club", thrown.Message, StringComparison.Ordinal);
    }
}
