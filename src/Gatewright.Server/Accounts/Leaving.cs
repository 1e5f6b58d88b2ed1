using Gatewright.Journal.Members;
using Gatewright.Server.Members;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Accounts;

/// <summary>Ends an account: every name of it is gone, and no entry is touched.</summary>
internal sealed class Leaving(StoreDb db, UserManager<Account> accounts)
{
    /// <summary>Ends the account.</summary>
    /// <returns>The club that would be left without a keeper, in which case nothing is done; null when it is done.</returns>
    public Task<string?> EndAsync(Account account, CancellationToken cancellation) => db.OneAfterAnotherAsync(
        async transaction =>
        {
            string? club = await EndCoreAsync(account, cancellation).ConfigureAwait(false);
            if (club is null)
            {
                await transaction.CommitAsync(cancellation).ConfigureAwait(false);
            }

            return club;
        },
        cancellation);

    private async Task<string?> EndCoreAsync(Account account, CancellationToken cancellation)
    {
        List<MembershipRow> memberships = await db.Memberships
            .Where(m => m.AccountId == account.Id).ToListAsync(cancellation).ConfigureAwait(false);
        foreach (MembershipRow membership in memberships)
        {
            bool others = await db.Memberships
                .AnyAsync(m => m.Club == membership.Club && m.AccountId != account.Id && m.AccountId != null && m.Role == "keeper", cancellation)
                .ConfigureAwait(false);
            bool anybody = await db.Memberships
                .AnyAsync(m => m.Club == membership.Club && m.AccountId != account.Id && m.AccountId != null, cancellation)
                .ConfigureAwait(false);
            if (membership.Role == "keeper" && !others && anybody)
            {
                return membership.Club;
            }

            (membership.Role, membership.AccountId) = (Roles.Former, null);
        }

        await db.SignIns.Where(s => s.AccountId == account.Id).ExecuteDeleteAsync(cancellation).ConfigureAwait(false);
        await db.SaveChangesAsync(cancellation).ConfigureAwait(false);
        IdentityResult ended = await accounts.DeleteAsync(account).ConfigureAwait(false);
        if (!ended.Succeeded)
        {
            // Rolled back with all the rest: half an end would leave a name without its clubs.
            throw new InvalidOperationException(string.Join(' ', ended.Errors.Select(e => e.Description)));
        }

        return null;
    }
}
