using System.Runtime.InteropServices;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Replay.Snapshots;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Copies;

/// <summary>Opens copies from the shelf, and writes the snapshots that make it quick.</summary>
internal static class CopySnapshots
{
    // A tail of so many entries is read in a moment; of a long journal it may be longer, or its whole age would be written
    // out all the time.
    private const long Tail = 2000;
    private const long IdleTail = 200;
    private const long Share = 20;

    /// <summary>From the snapshot and what came after it, or from all there is where the snapshot is of no use.</summary>
    public static async Task<CopyOnShelf> OpenAsync(IDeviceShelf shelf, DeviceClock clock, string device, string club, Func<ValueTask> breathe)
    {
        KeptClub kept = await shelf.ReadAsync(club, ReadFrom.Snapshot).ConfigureAwait(true);
        if (kept.Held is null)
        {
            throw new ShelfException(ShelfFault.Damaged, $"This device does not hold the club {club}.");
        }

        var copy = new CopyOnShelf(shelf, clock, device, kept.Held);
        if (kept.Snapshot is { } snapshot)
        {
            if (await ReadAsync(snapshot, kept.Held, breathe).ConfigureAwait(true) is { } read)
            {
                copy.Stand(copy.State with
                {
                    Shared = read, Number = snapshot.Number, SnapshotNumber = snapshot.Number, SnapshotPlace = snapshot.Place,
                });
            }
            else
            {
                kept = await shelf.ReadAsync(club, ReadFrom.Beginning).ConfigureAwait(true);
            }
        }

        await copy.TakeUpAsync(kept).ConfigureAwait(true);
        return copy;
    }

    /// <summary>Writes one, if it is time.</summary>
    public static async Task WriteAsync(CopyOnShelf copy, bool isIdle)
    {
        if (Since(copy) <= (isIdle ? IdleTail : Math.Max(Tail, copy.State.Club.Count / Share)))
        {
            return;
        }

        // What another page recorded must be in it, up to the place that it says.
        await copy.InTurnAsync(copy.ReadOnAsync).ConfigureAwait(true);
        CopyState state = copy.State;
        if (copy.IsAlone && state.Own.Unreadable.Count > 0)
        {
            return;
        }

        (Club club, long number, long place) = copy.IsAlone ? (state.Club, 0L, state.Own.LastPlace) : (state.Shared, state.Number, 0L);
        using var bytes = new MemoryStream();
        ClubSnapshot.Write(club, number, bytes);
        await copy.Shelf.PutSnapshotAsync(copy.Held.Club, new(number, place, bytes.GetBuffer().AsMemory(0, (int)bytes.Length))).ConfigureAwait(true);
        await copy.InTurnAsync(() =>
        {
            CopyState now = copy.State;
            copy.Stand(
                copy.IsAlone
                    ? now with { Shared = club, Own = now.Own.Without(now.Own.All.Where(o => o.Place <= place).Select(o => o.Place)), SnapshotPlace = place }
                    : now with { SnapshotNumber = number },
                copy.Ticking);
            return Task.CompletedTask;
        }).ConfigureAwait(true);
    }

    private static long Since(CopyOnShelf copy) =>
        copy.IsAlone ? copy.State.Own.All.LongCount() : copy.State.Number - copy.State.SnapshotNumber;

    private static async Task<Club?> ReadAsync(KeptSnapshot snapshot, HeldClub held, Func<ValueTask> breathe)
    {
        try
        {
            // A long club's is not copied once more.
            using MemoryStream bytes = MemoryMarshal.TryGetArray(snapshot.Bytes, out ArraySegment<byte> array)
                ? new(array.Array!, array.Offset, array.Count, writable: false)
                : new(snapshot.Bytes.ToArray(), writable: false);
            (Club club, long number) = await ClubSnapshot.ReadAsync(bytes, snapshot.IsVouched, breathe).ConfigureAwait(true);
            bool isWhole = club.Name == held.Club && number == snapshot.Number && number <= held.Pulled
                && (held.Home == ClubHome.Device || club.Count == number);
            return isWhole ? club : null;
        }
        catch (SnapshotException)
        {
            return null;
        }
    }
}
