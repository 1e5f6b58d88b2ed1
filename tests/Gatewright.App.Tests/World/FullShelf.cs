using Gatewright.Replica.Shelves;

namespace Gatewright.App.Tests.World;

/// <summary>A shelf in memory that can be full, or give nothing back.</summary>
internal sealed class FullShelf : IDeviceShelf
{
    private readonly MemoryShelf _shelf = new();

    /// <summary>Whether there is no more room: what frees some is still done.</summary>
    public bool IsFull { get; set; }

    /// <summary>Whether there is room for words, and for no more pictures.</summary>
    public bool IsFullOfPhotos { get; set; }

    /// <summary>What comes between a club and whoever reads it; null for nothing.</summary>
    public Func<Task>? Reading { get; set; }

    /// <summary>What comes between a club that is let go of and the shelf; null for nothing.</summary>
    public Func<Task>? LettingGo { get; set; }

    /// <summary>What comes between what is written and the shelf; null for nothing.</summary>
    public Func<Task>? Writing { get; set; }

    public Task<ShelfFront> OpenAsync(string newDevice) => _shelf.OpenAsync(newDevice);

    public Task SetAsync(string name, string? value) => WriteAsync(() => _shelf.SetAsync(name, value));

    public Task HoldAsync(HeldClub club) => WriteAsync(() => _shelf.HoldAsync(club));

    public async Task LetGoAsync(string club)
    {
        await (LettingGo?.Invoke() ?? Task.CompletedTask);
        await _shelf.LetGoAsync(club);
    }

    public async Task<KeptClub> ReadAsync(string club, ReadFrom from)
    {
        await (Reading?.Invoke() ?? Task.CompletedTask);
        return await _shelf.ReadAsync(club, from);
    }

    public async Task<IReadOnlyList<long>> AddOwnAsync(string club, IReadOnlyList<string> texts)
    {
        await RoomAsync();
        return await _shelf.AddOwnAsync(club, texts);
    }

    public Task ChangeOwnAsync(string club, IReadOnlyList<OwnRecord> replaced, IReadOnlyList<long> removed) =>
        WriteAsync(() => _shelf.ChangeOwnAsync(club, replaced, removed));

    public async Task<bool> AppendAsync(string club, PulledBlock block, IReadOnlyList<long> removed)
    {
        await RoomAsync();
        return await _shelf.AppendAsync(club, block, removed);
    }

    public Task StartOverAsync(string club, IReadOnlyList<string> own) => WriteAsync(() => _shelf.StartOverAsync(club, own));

    public Task MoveAsync(string from, string to, IReadOnlyList<string> own) => WriteAsync(() => _shelf.MoveAsync(from, to, own));

    public Task PutSnapshotAsync(string club, KeptSnapshot snapshot) => WriteAsync(() => _shelf.PutSnapshotAsync(club, snapshot));

    public Task PutPhotoAsync(string club, KeptPhoto photo) => IsFullOfPhotos
        ? Task.FromException(new ShelfException(ShelfFault.Full, "No more room."))
        : WriteAsync(() => _shelf.PutPhotoAsync(club, photo));

    public Task<KeptPhoto?> PhotoAsync(string club, string sha256) => _shelf.PhotoAsync(club, sha256);

    public async Task<IReadOnlyDictionary<string, PhotoThere>> PhotosAsync(string club)
    {
        await (Reading?.Invoke() ?? Task.CompletedTask);
        return await _shelf.PhotosAsync(club);
    }

    public Task PhotoSentAsync(string club, string sha256) => WriteAsync(() => _shelf.PhotoSentAsync(club, sha256));

    public Task RemovePhotosAsync(string club, IReadOnlyList<string> sha256) => _shelf.RemovePhotosAsync(club, sha256);

    private async Task WriteAsync(Func<Task> write)
    {
        await RoomAsync();
        await write();
    }

    private async Task RoomAsync()
    {
        await (Writing?.Invoke() ?? Task.CompletedTask);
        if (IsFull)
        {
            throw new ShelfException(ShelfFault.Full, "No more room.");
        }
    }
}
