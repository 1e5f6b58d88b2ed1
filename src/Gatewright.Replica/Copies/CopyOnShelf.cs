using Gatewright.Journal.Entries;
using Gatewright.Journal.Replay;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Copies;

/// <summary>A copy and the shelf it stands on: whatever changes, changes there first.</summary>
/// <remarks>For one thread, as a page has: what happens at once waits its turn, and no turn lasts while a network answers.</remarks>
internal sealed class CopyOnShelf(IDeviceShelf shelf, DeviceClock clock, string device, HeldClub held)
{
    private readonly Turns _turns = new();

    public IDeviceShelf Shelf => shelf;

    public DeviceClock Clock => clock;

    public string Device => device;

    public HeldClub Held { get; set; } = held;

    /// <summary>Whether no server has the club's journal.</summary>
    public bool IsAlone => Held.Home == ClubHome.Device;

    public CopyState State { get; private set; } = CopyState.Empty(held.Club);

    /// <summary>Goes on from the greatest time the device has made or seen.</summary>
    public HybridClock Ticking { get; private set; }

    /// <summary>The greatest time of what others can have: what an entry made now is made in sight of.</summary>
    public HybridTime Seen => State.Own.In(OwnState.Sent).Select(o => o.Entry.Time).Append(State.Shared.Last).Max();

    public event Action? Changed;

    public void Stand(CopyState state, HybridClock? ticking = null)
    {
        State = state;
        Ticking = ticking ?? new(state.Club.Last);
    }

    /// <summary>Does one thing after another, and says afterwards that something changed.</summary>
    public async Task InTurnAsync(Func<Task> act)
    {
        bool changed = false;
        try
        {
            await _turns.TakeAsync(async () =>
            {
                CopyState before = State;
                try
                {
                    await act().ConfigureAwait(true);
                }
                finally
                {
                    changed = before.Club != State.Club || before.Own != State.Own;
                }
            }).ConfigureAwait(true);
        }
        finally
        {
            if (changed)
            {
                Changed?.Invoke();
            }
        }
    }

    /// <summary>Changes own entries. In turn.</summary>
    public async Task ChangeAsync(IReadOnlyList<OwnEntry> replaced, IReadOnlyList<long> removed)
    {
        if (replaced.Count > 0 || removed.Count > 0)
        {
            await shelf.ChangeOwnAsync(
                Held.Club, [.. replaced.Select(o => new OwnRecord(o.Place, OwnEntryJson.Write(o)))], removed).ConfigureAwait(true);
            Stand(State.With(State.Own.With(replaced).Without(removed)));
        }
    }

    /// <summary>Takes up what another page over the same shelf has written since. In turn.</summary>
    public async Task ReadOnAsync() =>
        await TakeUpAsync(await shelf.ReadAsync(Held.Club, new(State.Number, State.SnapshotPlace, false)).ConfigureAwait(true)).ConfigureAwait(true);

    /// <summary>Takes up what was read. In turn.</summary>
    public async Task TakeUpAsync(KeptClub kept)
    {
        if (kept.Held?.Pulled < State.Number)
        {
            // Another page has begun anew.
            Stand(CopyState.Empty(Held.Club));
            kept = await shelf.ReadAsync(Held.Club, ReadFrom.Beginning).ConfigureAwait(true);
        }

        if (kept.Held is null)
        {
            throw new ShelfException(ShelfFault.Damaged, $"This device no longer holds the club {Held.Name}.");
        }

        Recorded[] pulled = [.. Lines(kept).Where(n => n.Number > State.Number).Select(n => n.Recorded)];
        CopyState read = State.Pulled(pulled, IsAlone ? 0 : kept.Held.Pulled, OwnEntries.Empty);
        OwnEntries own = OwnEntries.Read(kept.Own);
        long[] back = [.. own.All.Where(o => read.Shared.Find(o.Entry.Id) is { } there && o.IsSaidBy(there.Entry)).Select(o => o.Place)];
        if (back.Length > 0)
        {
            await shelf.ChangeOwnAsync(Held.Club, [], back).ConfigureAwait(true);
        }

        Held = kept.Held;
        Stand(read.With(own.Without(back)));
    }

    private List<NumberedEntry> Lines(KeptClub kept)
    {
        try
        {
            return [.. kept.Blocks.SelectMany(block => NumberedLines.Read(block.Span))];
        }
        catch (FormatException broken)
        {
            throw new ShelfException(ShelfFault.Damaged, $"What this device keeps of the club {Held.Name} cannot be read.", broken);
        }
    }
}
