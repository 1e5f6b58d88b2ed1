namespace Gatewright.Replica.Shelves;

/// <summary>
/// Where a device keeps what it has of its clubs. Whatever a call changes it changes whole or not at all, and it stays
/// once the call has been awaited: through a reload, a closed page, a flat battery.
/// </summary>
/// <remarks>
/// Several pages of one browser may stand over one shelf. Calls are few and large, since each may cross into another
/// language; what they hand over is bytes and text that the shelf need not understand.
/// </remarks>
public interface IDeviceShelf
{
    /// <summary>What stands on the shelf, apart from journals and pictures.</summary>
    /// <param name="newDevice">The device's id from now on, if the shelf has none yet.</param>
    /// <exception cref="ShelfException">The shelf cannot be read.</exception>
    Task<ShelfFront> OpenAsync(string newDevice);

    /// <summary>Keeps a small setting.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="value">Its value; null to keep it no longer.</param>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task SetAsync(string name, string? value);

    /// <summary>Takes a club up, or keeps what is newly known of it. How far it was pulled stays as it is.</summary>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task HoldAsync(HeldClub club);

    /// <summary>Lets go of a club with all that was kept of it. What was not sent is lost: ask before.</summary>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task LetGoAsync(string club);

    /// <summary>Reads a club: all that is asked for in one call.</summary>
    /// <param name="club">The club.</param>
    /// <param name="from">From where on.</param>
    /// <exception cref="ShelfException">The shelf cannot be read.</exception>
    Task<KeptClub> ReadAsync(string club, ReadFrom from);

    /// <summary>Adds records of the device's own, and gives each its place: greater than any before it in the club.</summary>
    /// <param name="club">The club.</param>
    /// <param name="texts">The records, in order.</param>
    /// <returns>Their places, in the same order.</returns>
    /// <exception cref="ShelfException">None was added.</exception>
    Task<IReadOnlyList<long>> AddOwnAsync(string club, IReadOnlyList<string> texts);

    /// <summary>Replaces and removes records of the device's own. One that is gone meanwhile stays gone.</summary>
    /// <param name="club">The club.</param>
    /// <param name="replaced">Those to stand in place of what is there.</param>
    /// <param name="removed">The places of those to be removed.</param>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task ChangeOwnAsync(string club, IReadOnlyList<OwnRecord> replaced, IReadOnlyList<long> removed);

    /// <summary>
    /// Adds a block that was pulled, moves the club's number on to its end, and removes records of the device's own that
    /// stand in it.
    /// </summary>
    /// <param name="club">The club.</param>
    /// <param name="block">The block.</param>
    /// <param name="removed">The places of own records that came back in it.</param>
    /// <returns>False, and nothing is changed, where the club's number is not the one that the block follows.</returns>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task<bool> AppendAsync(string club, PulledBlock block, IReadOnlyList<long> removed);

    /// <summary>
    /// Begins a club's journal anew: what was pulled, and the snapshot, go; its number is 0; own records are added; and its pictures are
    /// unsent.
    /// </summary>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task StartOverAsync(string club, IReadOnlyList<string> own);

    /// <summary>Moves a club into another that is held: its records are added, its pictures become unsent ones of the other, and it goes.</summary>
    /// <param name="from">The club that goes.</param>
    /// <param name="to">The club that gets them.</param>
    /// <param name="own">The records, as they are to be in the other club.</param>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task MoveAsync(string from, string to, IReadOnlyList<string> own);

    /// <summary>Keeps a snapshot of a club in place of the one before.</summary>
    /// <exception cref="ShelfException">The one before is still there.</exception>
    Task PutSnapshotAsync(string club, KeptSnapshot snapshot);

    /// <summary>Keeps a picture.</summary>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task PutPhotoAsync(string club, KeptPhoto photo);

    /// <summary>A picture by its hash; null where the shelf has none.</summary>
    /// <exception cref="ShelfException">The shelf cannot be read.</exception>
    Task<KeptPhoto?> PhotoAsync(string club, string sha256);

    /// <summary>What a club has of pictures, by their hashes.</summary>
    /// <exception cref="ShelfException">The shelf cannot be read.</exception>
    Task<IReadOnlyDictionary<string, PhotoThere>> PhotosAsync(string club);

    /// <summary>Notes that the server has a picture, or will never take it.</summary>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task PhotoSentAsync(string club, string sha256);

    /// <summary>Throws pictures away. One that is not there makes no difference.</summary>
    /// <exception cref="ShelfException">Nothing was changed.</exception>
    Task RemovePhotosAsync(string club, IReadOnlyList<string> sha256);
}
