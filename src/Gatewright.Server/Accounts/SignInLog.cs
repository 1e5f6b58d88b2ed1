using Gatewright.Store.Schema;

namespace Gatewright.Server.Accounts;

/// <summary>Keeps the record of who signed in, tried to, or changed who may. No name, no address: ids alone.</summary>
internal sealed class SignInLog(StoreDb db, TimeProvider clock)
{
    /// <summary>Adds a line.</summary>
    public async Task AddAsync(string outcome, string? account, string? club, CancellationToken cancellation)
    {
        DateTimeOffset now = clock.GetUtcNow();
        db.SignIns.Add(new()
        {
            Id = Guid.CreateVersion7(now),
            AtTicks = now.UtcTicks,
            AccountId = account,
            Club = club,
            Outcome = outcome,
        });
        await db.SaveChangesAsync(cancellation).ConfigureAwait(false);
    }
}
