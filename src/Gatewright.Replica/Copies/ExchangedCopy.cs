using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;

namespace Gatewright.Replica.Copies;

/// <summary>What an exchange with the server does to a copy: on the shelf first, each step whole or not at all.</summary>
internal sealed class ExchangedCopy(CopyOnShelf copy)
{
    /// <summary>The number of the last entry that was pulled.</summary>
    public long Number => copy.State.Number;

    /// <summary>What is to be sent in a member's name, in the order of its times.</summary>
    public IReadOnlyList<OwnEntry> Unsent(string member) =>
        [.. copy.State.Own.In(OwnState.Unsent).Where(o => o.Entry.Member == member).OrderBy(o => o.Entry, EntryOrder.Instance)];

    /// <summary>Takes a page of the journal, as the server wrote it.</summary>
    /// <exception cref="FormatException">It cannot be read, or was cut off.</exception>
    public Task TakeAsync(ReadOnlyMemory<byte> lines)
    {
        List<NumberedEntry> page = NumberedLines.Read(lines.Span);
        return page.Count == 0 ? Task.CompletedTask : copy.InTurnAsync(async () =>
        {
            // Another page of the browser may have pulled meanwhile: then the shelf has it.
            if (page[0].Number != copy.State.Number + 1 || page[^1].Number - page[0].Number != page.Count - 1)
            {
                await copy.ReadOnAsync().ConfigureAwait(true);
                return;
            }

            Dictionary<Guid, Entry> there = page.ToDictionary(n => n.Recorded.Entry.Id, n => n.Recorded.Entry);
            await RenewAsync([.. copy.State.Own.All.Where(o => there.TryGetValue(o.Entry.Id, out Entry? other) && !o.IsSaidBy(other))]).ConfigureAwait(true);
            long[] back = [.. copy.State.Own.All.Where(o => there.ContainsKey(o.Entry.Id)).Select(o => o.Place)];
            if (!await copy.Shelf.AppendAsync(copy.Held.Club, new(copy.State.Number, page[^1].Number, lines), back).ConfigureAwait(true))
            {
                await copy.ReadOnAsync().ConfigureAwait(true);
                return;
            }

            copy.Held = copy.Held with { Pulled = page[^1].Number };
            copy.Stand(copy.State.Pulled(page.Select(n => n.Recorded), page[^1].Number, copy.State.Own.Without(back)));
        });
    }

    /// <summary>Notes what became of entries that were sent.</summary>
    public Task SettleAsync(IReadOnlyList<OwnEntry> settled) => settled.Count == 0 ? Task.CompletedTask : copy.InTurnAsync(() =>
        // Whatever was decided of them meanwhile counts.
        copy.ChangeAsync([.. settled.Where(s => copy.State.Own.Find(s.Entry.Id) is { State: OwnState.Unsent })], []));

    /// <summary>Gives unsent entries the times they would have by a clock that is right.</summary>
    /// <param name="right">The server's clock.</param>
    /// <param name="all">Whether all are moved, or those only whose clock was not compared with the server's.</param>
    public Task RestampAsync(DateTimeOffset right, bool all) => copy.InTurnAsync(() =>
    {
        IReadOnlyList<OwnEntry> unsent = copy.State.Own.In(OwnState.Unsent);
        if (!unsent.Any(o => all || !o.IsTimeRight))
        {
            return Task.CompletedTask;
        }

        HybridTime first = unsent.Min(o => o.Entry.Time);
        HybridTime made = copy.State.Club.All().Select(r => r.Entry)
            .Where(e => e.Device == copy.Device && e.Time < first && e.Time.Instant <= right + DeviceClock.Allowed)
            .Select(e => e.Time).Append(default).Max();
        return copy.ChangeAsync(Restamping.Moved(unsent, o => all || !o.IsTimeRight, copy.Clock.Now, right, made), []);
    });

    /// <summary>Settles own entries whose ids the journal has: those that are the same have come back, the others get ids of their own.</summary>
    /// <param name="ids">The ids that the server said it has otherwise.</param>
    public Task ResolveAsync(IReadOnlySet<Guid> ids) => copy.InTurnAsync(async () =>
    {
        OwnEntry[] asked = [.. copy.State.Own.In(OwnState.Unsent).Where(o => ids.Contains(o.Entry.Id))];
        long[] back = [.. asked.Where(o => copy.State.Shared.Find(o.Entry.Id) is { } there && o.IsSaidBy(there.Entry)).Select(o => o.Place)];
        await copy.ChangeAsync([], back).ConfigureAwait(true);
        await RenewAsync([.. asked.Where(o => !back.Contains(o.Place))]).ConfigureAwait(true);
    });

    /// <summary>Begins anew with a journal that the server has lost the end of: what its member recorded is sent again.</summary>
    public Task StartOverAsync() => copy.InTurnAsync(async () =>
    {
        string[] own = [.. copy.State.Shared.All()
            .Where(r => r.Entry.Member == copy.Held.Member)
            .Select(r => OwnEntryJson.Write(new() { Place = 0, Entry = r.Entry, Seen = r.Entry.Time, IsTimeRight = true }))];
        await copy.ChangeAsync([.. copy.State.Own.In(OwnState.Sent).Select(o => o with { State = OwnState.Unsent, Number = null })], [])
            .ConfigureAwait(true);
        await copy.Shelf.StartOverAsync(copy.Held.Club, own).ConfigureAwait(true);
        copy.Stand(CopyState.Empty(copy.Held.Club));
        await copy.ReadOnAsync().ConfigureAwait(true);
    });

    /// <summary>Gives own entries ids of their own, and retractions of them the ids they now have.</summary>
    private Task RenewAsync(IReadOnlyList<OwnEntry> conflicting)
    {
        Dictionary<Guid, Guid> ids = conflicting.ToDictionary(o => o.Entry.Id, o => Guid.CreateVersion7(o.Entry.Time.Instant));
        var renewed = new List<OwnEntry>();
        foreach (OwnEntry own in copy.State.Own.All.Where(o => ids.Count > 0 && o.State != OwnState.Sent))
        {
            Entry entry = own.Entry;
            if (FactKinds.Read(entry, out _) is Retracted retracted && ids.TryGetValue(retracted.Entry, out Guid target))
            {
                entry = DevicePen.Again(entry, body: FactKinds.Write(retracted with { Entry = target }).Body);
            }

            if (ids.TryGetValue(entry.Id, out Guid id))
            {
                entry = DevicePen.Again(entry, id);
            }

            if (entry != own.Entry)
            {
                renewed.Add(own with { Entry = entry });
            }
        }

        return copy.ChangeAsync(renewed, []);
    }
}
