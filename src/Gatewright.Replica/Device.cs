using System.Security.Cryptography;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica;

/// <summary>A device with the clubs it holds: the whole of what works without a network.</summary>
public sealed class Device
{
    private const string KeeperRole = "keeper";

    private readonly IDeviceShelf _shelf;
    private readonly Func<ValueTask> _breathe;
    private readonly Dictionary<string, HeldClub> _held;
    private readonly Dictionary<string, string> _settings;
    private readonly Dictionary<string, Task<ClubCopy>> _copies = [];

    private Device(IDeviceShelf shelf, TimeProvider clock, Func<ValueTask> breathe, ShelfFront front)
    {
        (_shelf, _breathe) = (shelf, breathe);
        Clock = new(clock);
        Id = front.Device;
        _held = front.Clubs.ToDictionary(c => c.Club);
        _settings = new(front.Settings);
    }

    /// <summary>The device's id: in every entry it makes.</summary>
    public string Id { get; }

    /// <summary>Its clock.</summary>
    public DeviceClock Clock { get; }

    /// <summary>The clubs it holds, by name.</summary>
    public IReadOnlyList<HeldClub> Clubs => [.. _held.Values.OrderBy(c => c.Name, StringComparer.Ordinal)];

    /// <summary>Its small settings.</summary>
    public IReadOnlyDictionary<string, string> Settings => _settings;

    /// <summary>Said when it holds other clubs than before, or something else is known of one.</summary>
    public event Action? ClubsChanged;

    /// <summary>Said when something was recorded in a club: the exchange may send it, other pages may look.</summary>
    public event Action<ClubCopy>? HasNews;

    /// <summary>Opens a device's shelf.</summary>
    /// <param name="shelf">The shelf.</param>
    /// <param name="clock">The device's clock.</param>
    /// <param name="breathe">Called after each little of what takes long, and awaited; null where nobody need be heard meanwhile.</param>
    /// <exception cref="ShelfException">It cannot be read.</exception>
    public static async Task<Device> OpenAsync(IDeviceShelf shelf, TimeProvider clock, Func<ValueTask>? breathe = null)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return new(shelf, clock, breathe ?? (() => ValueTask.CompletedTask), await shelf.OpenAsync(NewId("d")).ConfigureAwait(true));
    }

    /// <summary>Keeps a small setting; null keeps it no longer.</summary>
    /// <exception cref="ShelfException">It is as it was.</exception>
    public async Task SetAsync(string name, string? value)
    {
        await _shelf.SetAsync(name, value).ConfigureAwait(true);
        if (value is null)
        {
            _settings.Remove(name);
        }
        else
        {
            _settings[name] = value;
        }
    }

    /// <summary>A small setting of a club; null where there is none.</summary>
    public string? Of(string club, string name) => _settings.GetValueOrDefault(Name(club, name));

    /// <summary>
    /// Keeps a small setting of a club for as long as the club is held; null keeps it no longer. Of a club that is not held
    /// nothing is kept, nor does that fail: whoever sets it may not have heard that it went.
    /// </summary>
    /// <exception cref="ShelfException">It is as it was.</exception>
    public async Task SetAsync(string club, string name, string? value)
    {
        if (!_held.ContainsKey(club))
        {
            return;
        }

        await SetAsync(Name(club, name), value).ConfigureAwait(true);
        if (!_held.ContainsKey(club))
        {
            // It went while this was written.
            await SetAsync(Name(club, name), null).ConfigureAwait(true);
        }
    }

    /// <summary>A club that the device holds; the same object each time.</summary>
    /// <exception cref="ShelfException">It cannot be read, or is not held.</exception>
    public async Task<ClubCopy> ClubAsync(string club)
    {
        if (!_copies.TryGetValue(club, out Task<ClubCopy>? opening) || opening.IsFaulted)
        {
            _copies[club] = opening = OpenCopyAsync(club);
        }

        return await opening.ConfigureAwait(true);
    }

    /// <summary>Begins a club that lives on this device alone.</summary>
    /// <exception cref="ShelfException">There is no such club.</exception>
    public async Task<ClubCopy> StartClubAsync(string name)
    {
        var club = new HeldClub(NewId("c"), name, NewId("m"), KeeperRole, ClubHome.Device);
        await HoldAsync(club).ConfigureAwait(true);
        ClubCopy copy = await ClubAsync(club.Club).ConfigureAwait(true);
        await copy.RecordAsync(new ThingSet(Things.Settings, "club", new Dictionary<string, string?> { ["name"] = name })).ConfigureAwait(true);
        return copy;
    }

    /// <summary>Lets go of a club with all that is kept of it here. What was not sent is lost: ask before.</summary>
    /// <exception cref="ShelfException">It is still held, or some of its small settings are still there.</exception>
    public async Task LetGoAsync(string club)
    {
        await _shelf.LetGoAsync(club).ConfigureAwait(true);
        Forget(club);
        await ForgetSettingsAsync(club).ConfigureAwait(true);
    }

    /// <summary>
    /// Hands a club that lives on this device alone over to one that a server keeps: all that was recorded is recorded there,
    /// in the name of the member who is its keeper here, and the club on this device is no more. All of it happens, or none.
    /// The club that takes it in keeps its own settings: those of the other, though they may be later, stay behind.
    /// </summary>
    /// <exception cref="InvalidOperationException">The one does not live here alone, or the other has another keeper.</exception>
    /// <exception cref="ShelfException">Both are as they were; or it is handed over, and something small of the one that is no more is still there.</exception>
    public async Task<ClubCopy> HandOverAsync(string from, string to)
    {
        if (_held[from].Home != ClubHome.Device || _held[to] is not { Home: ClubHome.Server, Role: KeeperRole } target)
        {
            throw new InvalidOperationException("Only a club of this device alone is handed over, and only to one whose keeper you are.");
        }

        KeptClub kept = await _shelf.ReadAsync(from, ReadFrom.Beginning).ConfigureAwait(true);
        var own = OwnEntries.Read(kept.Own);
        if (own.Unreadable.Count > 0)
        {
            throw new ShelfException(ShelfFault.Damaged, "Some of the club was recorded by a newer program: hand it over with that.");
        }

        string[] texts = [.. WithoutSettings(own.All).Select(o => OwnEntryJson.Write(
            o with { Entry = DevicePen.Again(o.Entry, club: target.Club, member: target.Member) }))];
        await _shelf.MoveAsync(from, to, texts).ConfigureAwait(true);
        Forget(from);
        ClubCopy copy = await ClubAsync(to).ConfigureAwait(true);
        await copy.LookAgainAsync().ConfigureAwait(true);
        HasNews?.Invoke(copy);
        await ForgetSettingsAsync(from).ConfigureAwait(true);
        return copy;
    }

    /// <summary>
    /// Takes up the clubs of whoever is signed in. Those of somebody else stay as they are, with all that was not sent, until
    /// they sign in again or let go of them.
    /// </summary>
    /// <exception cref="ShelfException">Some may not have been taken up.</exception>
    public async Task JoinAsync(SessionAnswer session)
    {
        ArgumentNullException.ThrowIfNull(session);
        if (session.Account is null)
        {
            return;
        }

        foreach (SessionClub club in session.Clubs)
        {
            await HoldAsync(new(club.Club, club.Name, club.Member, club.Role, ClubHome.Server)).ConfigureAwait(true);
        }

        foreach (HeldClub held in Clubs.Where(c => c.Home == ClubHome.Server && session.Clubs.All(s => s.Club != c.Club)))
        {
            await HoldAsync(held with { Home = ClubHome.Left }).ConfigureAwait(true);
        }
    }

    /// <summary>Keeps a picture until it is sent; then record it with the hash.</summary>
    /// <returns>The hash.</returns>
    /// <exception cref="ShelfException">It is not kept.</exception>
    public async Task<string> AddPhotoAsync(string club, ReadOnlyMemory<byte> bytes, string mediaType)
    {
        string sha256 = Hash(bytes);
        await _shelf.PutPhotoAsync(club, new(sha256, mediaType, bytes, IsUnsent: true)).ConfigureAwait(true);
        return sha256;
    }

    /// <summary>A picture as far as it is here; null where it is not.</summary>
    /// <exception cref="ShelfException">It cannot be read.</exception>
    public Task<KeptPhoto?> PhotoAsync(string club, string sha256) => _shelf.PhotoAsync(club, sha256);

    /// <summary>The pictures of a club that the server does not have, by their hashes.</summary>
    /// <exception cref="ShelfException">They cannot be counted.</exception>
    public async Task<IReadOnlyList<string>> UnsentPhotosAsync(string club) =>
        [.. (await _shelf.PhotosAsync(club).ConfigureAwait(true)).Where(p => p.Value.IsUnsent).Select(p => p.Key)];

    /// <summary>
    /// The unsent pictures of a club that entries of it alone tell of: they go with the entries, since nobody would find them any
    /// more.
    /// </summary>
    /// <exception cref="ShelfException">It cannot be read.</exception>
    public async Task<IReadOnlyList<string>> PhotosOfAsync(ClubCopy copy, IReadOnlyCollection<Guid> entries)
    {
        ArgumentNullException.ThrowIfNull(copy);
        Recorded[] own = [.. copy.NotShared.Concat(copy.Refused).Select(o => Recorded.Of(o.Entry)).Where(r => r.Fact is PhotoTaken)];
        if (!own.Any(r => entries.Contains(r.Entry.Id)))
        {
            // Looking through a long journal takes a while.
            return [];
        }

        ILookup<bool, string> told = copy.Club.All().Concat(own).Where(r => r.Fact is PhotoTaken)
            .ToLookup(r => entries.Contains(r.Entry.Id), r => ((PhotoTaken)r.Fact).Sha256);
        return [.. (await UnsentPhotosAsync(copy.Held.Club).ConfigureAwait(true)).Intersect(told[true]).Except(told[false])];
    }

    /// <summary>Throws pictures of a club away. What was not sent is lost: ask before.</summary>
    /// <exception cref="ShelfException">They are still there.</exception>
    public Task DiscardPhotosAsync(string club, IReadOnlyList<string> sha256) => _shelf.RemovePhotosAsync(club, sha256);

    /// <summary>The pictures that the server has too and gives back when they are looked at, with the bytes they take.</summary>
    /// <exception cref="ShelfException">They cannot be counted.</exception>
    public async Task<IReadOnlyList<SentPhoto>> SentPhotosAsync()
    {
        var sent = new List<SentPhoto>();
        foreach (HeldClub club in Clubs.Where(c => c.Home == ClubHome.Server))
        {
            sent.AddRange((await _shelf.PhotosAsync(club.Club).ConfigureAwait(true))
                .Where(p => !p.Value.IsUnsent).Select(p => new SentPhoto(club.Club, p.Key, p.Value.Bytes)));
        }

        return sent;
    }

    /// <summary>The hash of a picture.</summary>
    internal static string Hash(ReadOnlyMemory<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes.Span));

    /// <summary>Its shelf.</summary>
    internal IDeviceShelf Shelf => _shelf;

    /// <summary>The copies that are open.</summary>
    public IEnumerable<ClubCopy> Open => _copies.Values.Where(c => c.IsCompletedSuccessfully).Select(c => c.Result);

    private static IEnumerable<OwnEntry> WithoutSettings(IEnumerable<OwnEntry> entries)
    {
        // What takes back an entry that stays behind would have nothing to take back, and be refused; entries come after what they take back.
        var behind = new HashSet<Guid>();
        foreach (OwnEntry own in entries)
        {
            Fact? fact = FactKinds.Read(own.Entry, out _);
            if (fact is ThingSet { Thing: Things.Settings } || (fact is Retracted taken && behind.Contains(taken.Entry)))
            {
                behind.Add(own.Entry.Id);
            }
            else
            {
                yield return own;
            }
        }
    }

    private static string NewId(string kind) => $"{kind}-{Guid.NewGuid():N}";

    private static string Name(string club, string name) => $"{name}/{club}";

    private async Task<ClubCopy> OpenCopyAsync(string club)
    {
        ClubCopy copy = await ClubCopy.OpenAsync(_shelf, Clock, Id, club, _breathe).ConfigureAwait(true);
        copy.HasNews += c => HasNews?.Invoke(c);
        return copy;
    }

    private async Task HoldAsync(HeldClub club)
    {
        if (!IsKnown(club))
        {
            await _shelf.HoldAsync(club).ConfigureAwait(true);
            Note(club);
        }
    }

    private bool IsKnown(HeldClub club) =>
        _held.TryGetValue(club.Club, out HeldClub? before) && before with { Pulled = 0 } == club with { Pulled = 0 };

    /// <summary>Notes what is on the shelf.</summary>
    private void Note(HeldClub club)
    {
        if (IsKnown(club))
        {
            return;
        }

        _held[club.Club] = club;
        foreach (ClubCopy copy in Open.Where(c => c.Held.Club == club.Club))
        {
            copy.Hold(club);
        }

        ClubsChanged?.Invoke();
    }

    private void Forget(string club)
    {
        _held.Remove(club);
        _copies.Remove(club);
        ClubsChanged?.Invoke();
    }

    private async Task ForgetSettingsAsync(string club)
    {
        foreach (string setting in _settings.Keys.Where(s => s.EndsWith(Name(club, string.Empty), StringComparison.Ordinal)).ToArray())
        {
            await SetAsync(setting, null).ConfigureAwait(true);
        }
    }
}
