using System.Data;
using Gatewright.Server.Problems;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Gatewright.Server.Members;

/// <summary>Changes to memberships that hold only if nobody changes others meanwhile: a club keeps a keeper.</summary>
internal static class OneAfterAnother
{
    private const int Tries = 10;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    /// <summary>Does a change as if nobody else did any; again, on what is there then, where another was quicker.</summary>
    /// <param name="db">The tables.</param>
    /// <param name="change">The change, which commits the transaction it is given or leaves it.</param>
    /// <param name="cancellation">Stops it.</param>
    public static async Task<T> OneAfterAnotherAsync<T>(
        this StoreDb db, Func<IDbContextTransaction, Task<T>> change, CancellationToken cancellation)
    {
        for (int tries = 1; ; tries++)
        {
            // Whoever was quicker may still be at their commit, and until then each try is in vain.
            await Task.Delay(Pause * (tries - 1), cancellation).ConfigureAwait(false);
            await using IDbContextTransaction transaction = await db.Database
                .BeginTransactionAsync(IsolationLevel.Serializable, cancellation).ConfigureAwait(false);
            try
            {
                return await change(transaction).ConfigureAwait(false);
            }
            catch (Exception thrown) when (tries < Tries && StoreTrouble.IsOvertaken(thrown))
            {
                db.ChangeTracker.Clear();
            }
        }
    }
}
