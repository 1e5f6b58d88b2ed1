namespace Gatewright.Replica.Shelves;

/// <summary>
/// A shelf in memory, for tests, and for where a browser lets nothing be kept: then say so on the screen, since it is gone
/// with the page.
/// </summary>
/// <remarks>Each call is done when it returns. It is for one thread, as a page has.</remarks>
public sealed class MemoryShelf : IDeviceShelf
{
    private readonly Dictionary<string, Compartment> _clubs = [];
    private readonly Dictionary<string, string> _settings = [];
    private string? _device;

    /// <inheritdoc/>
    public Task<ShelfFront> OpenAsync(string newDevice)
    {
        _device ??= newDevice;
        return Task.FromResult(new ShelfFront(
            _device, [.. _clubs.Values.Select(c => c.Held)], new Dictionary<string, string>(_settings)));
    }

    /// <inheritdoc/>
    public Task SetAsync(string name, string? value)
    {
        if (value is null)
        {
            _settings.Remove(name);
        }
        else
        {
            _settings[name] = value;
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task HoldAsync(HeldClub club)
    {
        ArgumentNullException.ThrowIfNull(club);
        if (_clubs.TryGetValue(club.Club, out Compartment? held))
        {
            held.Held = club with { Pulled = held.Held.Pulled };
        }
        else
        {
            _clubs[club.Club] = new(club with { Pulled = 0 });
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task LetGoAsync(string club)
    {
        _clubs.Remove(club);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task<KeptClub> ReadAsync(string club, ReadFrom from) =>
        Task.FromResult(_clubs.TryGetValue(club, out Compartment? held) ? held.Read(from) : new(null, null, [], []));

    /// <inheritdoc/>
    public Task<IReadOnlyList<long>> AddOwnAsync(string club, IReadOnlyList<string> texts) =>
        Task.FromResult<IReadOnlyList<long>>(Of(club).Add(texts));

    /// <inheritdoc/>
    public Task ChangeOwnAsync(string club, IReadOnlyList<OwnRecord> replaced, IReadOnlyList<long> removed)
    {
        ArgumentNullException.ThrowIfNull(replaced);
        ArgumentNullException.ThrowIfNull(removed);
        Of(club).Change(replaced, removed);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task<bool> AppendAsync(string club, PulledBlock block, IReadOnlyList<long> removed)
    {
        ArgumentNullException.ThrowIfNull(block);
        ArgumentNullException.ThrowIfNull(removed);
        Compartment held = Of(club);
        if (held.Held.Pulled != block.After)
        {
            return Task.FromResult(false);
        }

        held.Blocks.Add(block with { Lines = block.Lines.ToArray() });
        held.Held = held.Held with { Pulled = block.Last };
        held.Change([], removed);
        return Task.FromResult(true);
    }

    /// <inheritdoc/>
    public Task StartOverAsync(string club, IReadOnlyList<string> own)
    {
        Compartment held = Of(club);
        held.Blocks.Clear();
        held.Snapshot = null;
        held.Held = held.Held with { Pulled = 0 };
        held.Add(own);
        foreach (KeptPhoto photo in held.Photos.Values.ToArray())
        {
            held.Photos[photo.Sha256] = photo with { IsUnsent = true };
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task MoveAsync(string from, string to, IReadOnlyList<string> own)
    {
        Compartment target = Of(to);
        foreach (KeptPhoto photo in Of(from).Photos.Values)
        {
            target.Photos.TryAdd(photo.Sha256, photo with { IsUnsent = true });
        }

        target.Add(own);
        _clubs.Remove(from);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task PutSnapshotAsync(string club, KeptSnapshot snapshot)
    {
        ArgumentNullException.ThrowIfNull(snapshot);
        Of(club).Snapshot = snapshot with { Bytes = snapshot.Bytes.ToArray() };
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task PutPhotoAsync(string club, KeptPhoto photo)
    {
        ArgumentNullException.ThrowIfNull(photo);
        Of(club).Photos.TryAdd(photo.Sha256, photo with { Bytes = photo.Bytes.ToArray() });
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task<KeptPhoto?> PhotoAsync(string club, string sha256) =>
        Task.FromResult(_clubs.TryGetValue(club, out Compartment? held) ? held.Photos.GetValueOrDefault(sha256) : null);

    /// <inheritdoc/>
    public Task<IReadOnlyDictionary<string, PhotoThere>> PhotosAsync(string club) =>
        Task.FromResult<IReadOnlyDictionary<string, PhotoThere>>(_clubs.TryGetValue(club, out Compartment? held)
            ? held.Photos.ToDictionary(p => p.Key, p => new PhotoThere(p.Value.IsUnsent, p.Value.Bytes.Length))
            : []);

    /// <inheritdoc/>
    public Task PhotoSentAsync(string club, string sha256)
    {
        if (Of(club).Photos.TryGetValue(sha256, out KeptPhoto? photo))
        {
            Of(club).Photos[sha256] = photo with { IsUnsent = false };
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task RemovePhotosAsync(string club, IReadOnlyList<string> sha256)
    {
        ArgumentNullException.ThrowIfNull(sha256);
        foreach (string gone in sha256)
        {
            Of(club).Photos.Remove(gone);
        }

        return Task.CompletedTask;
    }

    private Compartment Of(string club) => _clubs.TryGetValue(club, out Compartment? held)
        ? held
        : throw new ShelfException(ShelfFault.Damaged, $"This device does not hold the club {club}.");

    /// <summary>What is kept of one club.</summary>
    private sealed class Compartment(HeldClub held)
    {
        private readonly SortedDictionary<long, string> _own = [];
        private long _lastPlace;

        public HeldClub Held { get; set; } = held;

        public KeptSnapshot? Snapshot { get; set; }

        public List<PulledBlock> Blocks { get; } = [];

        public Dictionary<string, KeptPhoto> Photos { get; } = [];

        public long[] Add(IReadOnlyList<string> texts)
        {
            long[] places = [.. texts.Select((_, i) => _lastPlace + 1 + i)];
            foreach ((long place, string text) in places.Zip(texts))
            {
                _own.Add(place, text);
            }

            _lastPlace += places.Length;
            return places;
        }

        public void Change(IReadOnlyList<OwnRecord> replaced, IReadOnlyList<long> removed)
        {
            foreach (OwnRecord record in replaced)
            {
                if (_own.ContainsKey(record.Place))
                {
                    _own[record.Place] = record.Text;
                }
            }

            foreach (long place in removed)
            {
                _own.Remove(place);
            }
        }

        public KeptClub Read(ReadFrom from)
        {
            KeptSnapshot? snapshot = from.WithSnapshot ? Snapshot : null;
            long number = Math.Max(from.Number, snapshot?.Number ?? 0);
            long place = Math.Max(from.Place, snapshot?.Place ?? 0);
            return new(
                Held,
                snapshot,
                [.. Blocks.Where(b => b.Last > number).Select(b => b.Lines)],
                [.. _own.Where(o => o.Key > place).Select(o => new OwnRecord(o.Key, o.Value))]);
        }
    }
}
