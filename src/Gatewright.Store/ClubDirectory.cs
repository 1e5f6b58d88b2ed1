using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store;

/// <summary>Which clubs a store has. Holds no state of its own.</summary>
public sealed class ClubDirectory(StoreLocation location)
{
    /// <summary>All clubs by their id, those among them that have members and no entry yet.</summary>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<IReadOnlyList<KeptClub>> ListAsync(CancellationToken cancellation = default) =>
        Translation.RunAsync<IReadOnlyList<KeptClub>>(location, async () =>
        {
            await using StoreDb db = location.Open();
            Dictionary<string, long> last = await db.Clubs.AsNoTracking()
                .ToDictionaryAsync(c => c.Club, c => c.Last, cancellation).ConfigureAwait(false);
            List<MembershipRow> rows = await db.Memberships.AsNoTracking().ToListAsync(cancellation).ConfigureAwait(false);
            ILookup<string, KeptMember> members = rows.ToLookup(m => m.Club, m => new KeptMember(m.Member, m.Role));
            return [.. last.Keys.Union(members.Select(m => m.Key)).Order(StringComparer.Ordinal)
                .Select(club => new KeptClub(
                    club, last.GetValueOrDefault(club), [.. members[club].OrderBy(m => m.Member, StringComparer.Ordinal)]))];
        });
}

/// <summary>A club of a store.</summary>
/// <param name="Club">Its id.</param>
/// <param name="Entries">How many entries its journal has.</param>
/// <param name="Members">Who belongs to it, those who left included, by id.</param>
public sealed record KeptClub(string Club, long Entries, IReadOnlyList<KeptMember> Members);

/// <summary>A member of a club.</summary>
/// <param name="Member">The id.</param>
/// <param name="Role">keeper, helper, coach or crew; former for one who left.</param>
public sealed record KeptMember(string Member, string Role);
