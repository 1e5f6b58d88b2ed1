using System.Data.Common;
using Gatewright.Store.Checking;
using Gatewright.Store.Faults;
using Gatewright.Store.Opening;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Backup;

/// <summary>
/// Takes a backup of a store while others work on it: the store as it was at one moment, in a file that either engine
/// can be restored from.
/// </summary>
public static class StoreBackup
{
    /// <summary>Writes a backup and reads it back before it gets its name.</summary>
    /// <param name="location">The store.</param>
    /// <param name="path">The file to make; there must be none of that name.</param>
    /// <param name="now">The time to write into it.</param>
    /// <param name="cancellation">Stops it; nothing is left behind.</param>
    /// <returns>What was found when the same moment of the store was looked through: a backup of a store with faults has them too.</returns>
    /// <exception cref="StoreException">The store cannot be read, or the file not be written.</exception>
    public static Task<StoreReport> TakeAsync(
        StoreLocation location, string path, DateTimeOffset now, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(location);
        string file = Path.GetFullPath(path);
        if (Path.Exists(file))
        {
            throw new StoreException(
                StoreFault.NotEmpty, $"There is a file {file} already, which is left as it is.", "Name another.");
        }

        return Translation.RunAsync(location, () => TakeCoreAsync(location, file, now, cancellation));
    }

    private static async Task<StoreReport> TakeCoreAsync(
        StoreLocation location, string file, DateTimeOffset now, CancellationToken cancellation)
    {
        await OpenAsync(location, cancellation).ConfigureAwait(false);
        string part = $"{file}.{Guid.NewGuid():N}.part";
        try
        {
            var findings = new FindingList(StoreCheck.UsualMost);
            await using (StoreDb db = location.Open())
            {
                await db.Database.OpenConnectionAsync(cancellation).ConfigureAwait(false);
                await using DbTransaction transaction =
                    await Snapshot.BeginAsync(db.Database.GetDbConnection(), cancellation).ConfigureAwait(false);
                await using FileStream to = New(part);
                await BackupWriter.WriteAsync(transaction, BackupTable.Of(db), now, to, cancellation).ConfigureAwait(false);
                to.Flush(flushToDisk: true);
                await StoreCheck.RunAsync(transaction, location, findings, cancellation).ConfigureAwait(false);
            }

            await ReadBackAsync(part, cancellation).ConfigureAwait(false);
            File.Move(part, file, overwrite: false);
            return findings.Report;
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(
                StoreFault.Disk, $"The backup {file} cannot be written: {thrown.Message}",
                "See that its folder is there, that this program's user may write it and that there is room.", thrown);
        }
        finally
        {
            // Deleting what is not there is no error, unless its folder is not there either.
            if (File.Exists(part))
            {
                File.Delete(part);
            }
        }
    }

    private static Task OpenAsync(StoreLocation location, CancellationToken cancellation) =>
        location.Engine == Engine.Sqlite && !File.Exists(location.Name)
            ? throw new StoreException(StoreFault.Missing, $"There is no store {location.Name}.", "Name the folder it is in.")
            : StoreOpening.OpenAsync(location, cancellation);

    /// <summary>For its owner alone: accounts are in it.</summary>
    private static FileStream New(string path)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.ReadWrite, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return new(path, options);
    }

    private static async Task ReadBackAsync(string path, CancellationToken cancellation)
    {
        await using BackupReader backup = await BackupReader.OpenAsync(path, cancellation).ConfigureAwait(false);
        foreach (BackupPart part in backup.Manifest.Tables)
        {
            await foreach (var _ in backup.RowsAsync(part, cancellation).ConfigureAwait(false))
            {
            }
        }
    }
}
