using Gatewright.Replica.Shelves;

namespace Gatewright.App.Tests.World;

/// <summary>A shelf in memory that can be full, or give nothing back.</summary>
internal sealed class FullShelf : IDeviceShelf
{
    private readonly MemoryShelf _shelf = new();

    public bool IsFull { get; set; }

    public Task<ShelfFront> OpenAsync(string newDevice) => _shelf.OpenAsync(newDevice);

    /// <summary>What comes between a small setting and the shelf; null for nothing.</summary>
    public Func<Task>? Setting { get; set; }

    public async Task SetAsync(string name, string? value)
    {
        await (Setting?.Invoke() ?? Task.CompletedTask);
        await _shelf.SetAsync(name, value);
    }

    public Task HoldAsync(HeldClub club) => _shelf.HoldAsync(club);

    public Task LetGoAsync(string club) => _shelf.LetGoAsync(club);

    /// <summary>What comes between a club and whoever reads it; null for nothing.</summary>
    public Func<Task>? Reading { get; set; }

    public async Task<KeptClub> ReadAsync(string club, ReadFrom from)
    {
        await (Reading?.Invoke() ?? Task.CompletedTask);
        return await _shelf.ReadAsync(club, from);
    }

    public Task<IReadOnlyList<long>> AddOwnAsync(string club, IReadOnlyList<string> texts) =>
        IsFull ? throw new ShelfException(ShelfFault.Full, "No more room.") : _shelf.AddOwnAsync(club, texts);

    public Task ChangeOwnAsync(string club, IReadOnlyList<OwnRecord> replaced, IReadOnlyList<long> removed) =>
        _shelf.ChangeOwnAsync(club, replaced, removed);

    public Task<bool> AppendAsync(string club, PulledBlock block, IReadOnlyList<long> removed) => _shelf.AppendAsync(club, block, removed);

    public Task StartOverAsync(string club, IReadOnlyList<string> own) => _shelf.StartOverAsync(club, own);

    public Task MoveAsync(string from, string to, IReadOnlyList<string> own) => _shelf.MoveAsync(from, to, own);

    public Task PutSnapshotAsync(string club, KeptSnapshot snapshot) => _shelf.PutSnapshotAsync(club, snapshot);

    public Task PutPhotoAsync(string club, KeptPhoto photo) => _shelf.PutPhotoAsync(club, photo);

    public Task<KeptPhoto?> PhotoAsync(string club, string sha256) => _shelf.PhotoAsync(club, sha256);

    public Task<IReadOnlyDictionary<string, bool>> PhotosAsync(string club) => _shelf.PhotosAsync(club);

    public Task PhotoSentAsync(string club, string sha256) => _shelf.PhotoSentAsync(club, sha256);
}
