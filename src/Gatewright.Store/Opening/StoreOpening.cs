using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Opening;

/// <summary>Opens a store: sees that it can be used, and that its tables are those of this program.</summary>
public static class StoreOpening
{
    /// <summary>
    /// Connects, makes the store if there is none, and brings its tables up to date. Several programs may do so at once.
    /// </summary>
    /// <exception cref="StoreException">It cannot be opened; says why and what to do.</exception>
    /// <exception cref="StoreUnavailableException">It cannot be opened now.</exception>
    public static Task OpenAsync(StoreLocation location, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(location);
        return Translation.RunAsync(location, async () =>
        {
            await using StoreDb db = location.Open();
            if (await IsCurrentAsync(db, location, cancellation).ConfigureAwait(false))
            {
                return true;
            }

            // Another program may have brought the tables up to date while this one waited, so the lock is followed
            // by another look.
            await using IAsyncDisposable alone = await MigrationLock.TakeAsync(location, cancellation).ConfigureAwait(false);
            if (!await IsCurrentAsync(db, location, cancellation).ConfigureAwait(false))
            {
                await db.Database.MigrateAsync(cancellation).ConfigureAwait(false);
            }

            return true;
        });
    }

    private static async Task<bool> IsCurrentAsync(StoreDb db, StoreLocation location, CancellationToken cancellation)
    {
        // Asking first would hide why there is no connection: whether it can be reached is answered with yes or no only.
        await db.Database.OpenConnectionAsync(cancellation).ConfigureAwait(false);
        try
        {
            IEnumerable<string> done = await db.Database.GetAppliedMigrationsAsync(cancellation).ConfigureAwait(false);
            HashSet<string> applied = [.. done];
            HashSet<string> known = [.. db.Database.GetMigrations()];
            return applied.IsSubsetOf(known)
                ? applied.SetEquals(known)
                : throw new StoreException(
                    StoreFault.Newer, $"A newer Gatewright has written the store {location.Name}.",
                    "Use that version or a later one; this one has changed nothing.");
        }
        finally
        {
            await db.Database.CloseConnectionAsync().ConfigureAwait(false);
        }
    }
}
