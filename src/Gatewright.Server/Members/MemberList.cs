using Gatewright.Journal.Members;
using Gatewright.Server.Accounts;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Members;

/// <summary>Who belongs to a club.</summary>
internal sealed class MemberList(StoreDb db, SignInLog log)
{
    /// <summary>What stands in place of the name of somebody who left.</summary>
    public const string FormerName = "former member";

    /// <summary>All of them, those who left included: the journal still speaks of them.</summary>
    public async Task<IReadOnlyList<MemberSeen>> AllAsync(string club, CancellationToken cancellation) =>
        await db.Memberships.AsNoTracking()
            .Where(m => m.Club == club)
            .OrderBy(m => m.Member)
            .LeftJoin(db.Users, m => m.AccountId, a => a.Id, (m, a) => new MemberSeen(m.Member, a == null ? FormerName : a.DisplayName, m.Role))
            .ToListAsync(cancellation).ConfigureAwait(false);

    /// <summary>Gives a member another role.</summary>
    public Task<Change> ChangeRoleAsync(string club, string member, Role role, CancellationToken cancellation) =>
        ChangeAsync(club, member, m => m.Role = role.Word(), "role-" + role.Word(), staysKeeper: role == Role.Keeper, cancellation);

    /// <summary>Ends a membership: the name is gone, the entries stay under the member's id.</summary>
    public Task<Change> EndAsync(string club, string member, CancellationToken cancellation) =>
        ChangeAsync(club, member, m => (m.Role, m.AccountId) = (Roles.Former, null), "left", staysKeeper: false, cancellation);

    private Task<Change> ChangeAsync(
        string club, string member, Action<MembershipRow> change, string outcome, bool staysKeeper, CancellationToken cancellation) =>
        db.OneAfterAnotherAsync(
            async transaction =>
            {
                Change made = await ChangeAsync((club, member), change, outcome, staysKeeper, cancellation).ConfigureAwait(false);
                if (made == Change.Done)
                {
                    await transaction.CommitAsync(cancellation).ConfigureAwait(false);
                }

                return made;
            },
            cancellation);

    private async Task<Change> ChangeAsync(
        (string Club, string Member) who, Action<MembershipRow> change, string outcome, bool staysKeeper, CancellationToken cancellation)
    {
        (string club, string member) = who;
        List<MembershipRow> keepers = await db.Memberships
            .Where(m => m.Club == club && m.Role == "keeper" && m.AccountId != null)
            .ToListAsync(cancellation).ConfigureAwait(false);
        MembershipRow? row = await db.Memberships
            .FirstOrDefaultAsync(m => m.Club == club && m.Member == member && m.AccountId != null, cancellation).ConfigureAwait(false);
        if (row is null)
        {
            return Change.NoSuchMember;
        }

        if (!staysKeeper && keepers is [{ } only] && only.Member == member)
        {
            return Change.LastKeeper;
        }

        string? account = row.AccountId;
        change(row);
        await db.SaveChangesAsync(cancellation).ConfigureAwait(false);
        await log.AddAsync(outcome, account, club, cancellation).ConfigureAwait(false);
        return Change.Done;
    }
}

/// <summary>What became of a change to a membership.</summary>
internal enum Change
{
    /// <summary>It was made.</summary>
    Done,

    /// <summary>There is no such member, or they have left.</summary>
    NoSuchMember,

    /// <summary>The club would be left without a keeper.</summary>
    LastKeeper,
}
