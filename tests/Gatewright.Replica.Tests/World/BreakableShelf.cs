using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Tests.World;

/// <summary>A shelf whose page dies after so many calls, or that has no more room.</summary>
internal sealed class BreakableShelf(IDeviceShelf kept) : IDeviceShelf
{
    /// <summary>What is kept, whatever becomes of the page.</summary>
    public IDeviceShelf Kept { get; } = kept;

    /// <summary>How many calls were made.</summary>
    public int Calls { get; private set; }

    /// <summary>The call at which the page dies, from 1; 0 for never.</summary>
    public int DiesAt { get; set; }

    /// <summary>Whether that call still does its work, and only nobody hears.</summary>
    public bool DiesAfterwards { get; set; }

    /// <summary>Whether there is no more room.</summary>
    public bool IsFull { get; set; }

    public Task<ShelfFront> OpenAsync(string newDevice) => CallAsync(() => Kept.OpenAsync(newDevice), isWrite: false);

    public Task SetAsync(string name, string? value) => CallAsync(() => Kept.SetAsync(name, value));

    public Task HoldAsync(HeldClub club) => CallAsync(() => Kept.HoldAsync(club));

    public Task LetGoAsync(string club) => CallAsync(() => Kept.LetGoAsync(club), isWrite: false);

    public Task<KeptClub> ReadAsync(string club, ReadFrom from) => CallAsync(() => Kept.ReadAsync(club, from), isWrite: false);

    public Task<IReadOnlyList<long>> AddOwnAsync(string club, IReadOnlyList<string> texts) => CallAsync(() => Kept.AddOwnAsync(club, texts));

    public Task ChangeOwnAsync(string club, IReadOnlyList<OwnRecord> replaced, IReadOnlyList<long> removed) =>
        CallAsync(() => Kept.ChangeOwnAsync(club, replaced, removed));

    public Task<bool> AppendAsync(string club, PulledBlock block, IReadOnlyList<long> removed) => CallAsync(() => Kept.AppendAsync(club, block, removed));

    public Task StartOverAsync(string club, IReadOnlyList<string> own) => CallAsync(() => Kept.StartOverAsync(club, own));

    public Task MoveAsync(string from, string to, IReadOnlyList<string> own) => CallAsync(() => Kept.MoveAsync(from, to, own));

    public Task PutSnapshotAsync(string club, KeptSnapshot snapshot) => CallAsync(() => Kept.PutSnapshotAsync(club, snapshot));

    public Task PutPhotoAsync(string club, KeptPhoto photo) => CallAsync(() => Kept.PutPhotoAsync(club, photo));

    public Task<KeptPhoto?> PhotoAsync(string club, string sha256) => CallAsync(() => Kept.PhotoAsync(club, sha256), isWrite: false);

    public Task<IReadOnlyDictionary<string, PhotoThere>> PhotosAsync(string club) => CallAsync(() => Kept.PhotosAsync(club), isWrite: false);

    public Task PhotoSentAsync(string club, string sha256) => CallAsync(() => Kept.PhotoSentAsync(club, sha256));

    public Task RemovePhotosAsync(string club, IReadOnlyList<string> sha256) => CallAsync(() => Kept.RemovePhotosAsync(club, sha256), isWrite: false);

    private Task<bool> CallAsync(Func<Task> call, bool isWrite = true) => CallAsync(
        async () =>
        {
            await call();
            return true;
        },
        isWrite);

    private async Task<T> CallAsync<T>(Func<Task<T>> call, bool isWrite = true)
    {
        Calls++;
        await Task.Yield();
        if (isWrite && IsFull)
        {
            throw new ShelfException(ShelfFault.Full, "There is no more room on this device.");
        }

        if (DiesAt > 0 && Calls >= DiesAt)
        {
            if (Calls == DiesAt && DiesAfterwards)
            {
                await call();
            }

            throw new DeadPageException();
        }

        return await call();
    }
}

/// <summary>The page is gone: nothing of it goes on.</summary>
internal sealed class DeadPageException : Exception;
