using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Copies;

/// <summary>
/// A device's own copy of a club: what was pulled from the server, and beside it what was recorded here and has not come
/// back yet. What is recorded is on the shelf before anybody sees it.
/// </summary>
public sealed class ClubCopy
{
    private readonly CopyOnShelf _copy;

    private ClubCopy(CopyOnShelf copy)
    {
        _copy = copy;
        _copy.Changed += () => Changed?.Invoke(this);
        Exchanged = new(copy);
    }

    /// <summary>The club as it is here: shared and not yet shared, without what was refused.</summary>
    public Club Club => _copy.State.Club;

    /// <summary>What is known of the club and of the member here.</summary>
    public HeldClub Held => _copy.Held;

    /// <summary>
    /// What the server is not known to have, in the order in which it was recorded; nothing of a club that lives on this
    /// device alone.
    /// </summary>
    public IReadOnlyList<OwnEntry> NotShared => _copy.IsAlone ? [] : _copy.State.Own.In(OwnState.Unsent);

    /// <summary>
    /// Those not shared that whoever is signed in cannot send: another member recorded them here, or the club is not theirs. They
    /// wait for whoever recorded them.
    /// </summary>
    public IReadOnlyList<OwnEntry> OfOthers => [.. NotShared.Where(IsOfOthers)];

    /// <summary>What the server does not take, with why. Each waits for its maker: to be discarded, sent again, or written out.</summary>
    public IReadOnlyList<OwnEntry> Refused => _copy.State.Own.In(OwnState.Refused);

    /// <summary>Own records that a newer program wrote and this one cannot read: kept for that one.</summary>
    public IReadOnlyList<OwnRecord> Unreadable => _copy.State.Own.Unreadable;

    /// <summary>The number of the last entry that was pulled.</summary>
    public long Number => _copy.State.Number;

    /// <summary>Said when the club, or what is told beside it, has changed.</summary>
    public event Action<ClubCopy>? Changed;

    /// <summary>Said when there is something new to send, or no longer: the exchange may, and other pages may look.</summary>
    public event Action<ClubCopy>? HasNews;

    /// <summary>What an exchange does to it.</summary>
    internal ExchangedCopy Exchanged { get; }

    /// <summary>Records facts: all of them, or none.</summary>
    /// <param name="facts">What is recorded.</param>
    /// <returns>The ids of their entries, in the order of the facts, once they are on the shelf.</returns>
    /// <exception cref="NotRecordedException">A fact says what cannot be. Nothing was recorded.</exception>
    /// <exception cref="ShelfException">The shelf cannot take them: say that they are not saved. Nothing was recorded.</exception>
    public Task<IReadOnlyList<Guid>> RecordAsync(params Fact[] facts) => RecordAsync(facts, _ => { });

    /// <summary>Records facts, and has something worked out while the shelf takes them.</summary>
    /// <param name="facts">What is recorded.</param>
    /// <param name="meanwhile">Gets the club as it is going to be. It is not that yet, and never will be if the shelf refuses.</param>
    /// <returns>The ids of their entries, in the order of the facts, once they are on the shelf.</returns>
    /// <exception cref="NotRecordedException">A fact says what cannot be. Nothing was recorded.</exception>
    /// <exception cref="ShelfException">The shelf cannot take them: say that they are not saved. Nothing was recorded.</exception>
    public async Task<IReadOnlyList<Guid>> RecordAsync(IReadOnlyList<Fact> facts, Action<Club> meanwhile)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(meanwhile);
        IReadOnlyList<Guid> ids = [];
        if (facts.Count > 0)
        {
            await _copy.InTurnAsync(async () =>
            {
                (IReadOnlyList<OwnEntry> entries, IReadOnlyList<Recorded> records, HybridClock after) =
                    DevicePen.Write(Held, _copy.Device, facts, _copy.Ticking, _copy.Seen, _copy.Clock);
                Task<IReadOnlyList<long>> writing = _copy.Shelf.AddOwnAsync(Held.Club, [.. entries.Select(OwnEntryJson.Write)]);
                Club next = Club.With(records);
                try
                {
                    meanwhile(next);
                }
                finally
                {
                    IReadOnlyList<long> places = await writing.ConfigureAwait(true);
                    _copy.Stand(_copy.State.Recorded([.. entries.Zip(places, (entry, place) => entry with { Place = place })], next), after);
                }

                ids = [.. entries.Select(e => e.Entry.Id)];
            }).ConfigureAwait(true);
            HasNews?.Invoke(this);
        }

        return ids;
    }

    /// <summary>
    /// Throws entries away, because somebody said so: refused ones, and those that nobody here can send. One that is to be sent
    /// stays.
    /// </summary>
    /// <exception cref="ShelfException">All are still there.</exception>
    public async Task DiscardAsync(params IReadOnlyCollection<Guid> entries)
    {
        await _copy.InTurnAsync(() => _copy.ChangeAsync(
            [], [.. Refused.Concat(OfOthers).Where(o => entries.Contains(o.Entry.Id)).Select(o => o.Place)])).ConfigureAwait(true);
        HasNews?.Invoke(this);
    }

    /// <summary>Has a refused entry sent again: a role may have changed since.</summary>
    /// <exception cref="ShelfException">It is still refused.</exception>
    public async Task SendAgainAsync(Guid refused)
    {
        await _copy.InTurnAsync(() => FindRefused(refused) is { } own
            ? _copy.ChangeAsync([own with { State = OwnState.Unsent, Code = null, Reasons = [] }], [])
            : Task.CompletedTask).ConfigureAwait(true);
        HasNews?.Invoke(this);
    }

    /// <summary>The refused entries, and those that this program cannot read, as text to be kept or sent to a keeper.</summary>
    public string RefusedAsText() => OwnText.Of(Refused, Unreadable);

    /// <summary>All that the server does not have, as text to be kept or sent to a keeper.</summary>
    public string UnsharedAsText() => OwnText.Of([.. NotShared, .. Refused], Unreadable);

    /// <summary>Takes up what another page over the same shelf has written since.</summary>
    /// <exception cref="ShelfException">The shelf cannot be read; what is here stays as it was.</exception>
    public Task LookAgainAsync() => _copy.InTurnAsync(_copy.ReadOnAsync);

    /// <summary>
    /// Writes a snapshot, if the club has come far enough since the last. Call it when nobody waits: writing one of a long
    /// journal takes a while.
    /// </summary>
    /// <param name="isIdle">Whether there is time enough to write one sooner.</param>
    /// <exception cref="ShelfException">None was written. Nothing is lost: opening the club takes longer.</exception>
    public Task RestAsync(bool isIdle = false) => CopySnapshots.WriteAsync(_copy, isIdle);

    /// <summary>Opens a club that a device holds.</summary>
    /// <exception cref="ShelfException">The shelf cannot be read, or does not hold the club.</exception>
    internal static async Task<ClubCopy> OpenAsync(
        IDeviceShelf shelf, DeviceClock clock, string device, string club, Func<ValueTask> breathe) =>
        new(await CopySnapshots.OpenAsync(shelf, clock, device, club, breathe).ConfigureAwait(true));

    /// <summary>Notes what is newly known of the club, once it is on the shelf.</summary>
    internal void Hold(HeldClub held) => _copy.Held = held with { Pulled = _copy.Held.Pulled };

    private bool IsOfOthers(OwnEntry own) => Held.Home == ClubHome.Left || own.Entry.Member != Held.Member;

    private OwnEntry? FindRefused(Guid id) => _copy.State.Own.Find(id) is { State: OwnState.Refused } own ? own : null;
}
