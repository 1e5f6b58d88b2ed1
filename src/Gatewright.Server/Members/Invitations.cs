using System.Text.Json;
using Gatewright.Journal.Members;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Members;

/// <summary>Links that let people into clubs.</summary>
internal sealed class Invitations(StoreDb db, TimeProvider clock)
{
    /// <summary>How long a link for an account works when nothing else is said.</summary>
    public static readonly TimeSpan Usual = TimeSpan.FromDays(7);

    /// <summary>The longest a link for an account can work.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromDays(31);

    /// <summary>How long a crew's link works: a season and a bit.</summary>
    public static readonly TimeSpan OfCrew = TimeSpan.FromDays(400);

    /// <summary>Makes a link.</summary>
    /// <returns>Its row, and its secret, which nobody can ask for again.</returns>
    public async Task<(InvitationRow Row, string Secret)> MakeAsync(
        string club, Role role, string label, IReadOnlyList<string>? boats, string? madeBy, TimeSpan life, CancellationToken cancellation)
    {
        string secret = Secret.New();
        DateTimeOffset now = clock.GetUtcNow();
        var row = new InvitationRow
        {
            Club = club,
            Invitation = Secret.NewId(),
            SecretHash = Secret.Hash(secret),
            Role = role.Word(),
            Label = label,
            Boats = boats is null ? null : JsonSerializer.Serialize([.. boats], ServerJson.Default.StringArray),
            MadeBy = madeBy,
            MadeTicks = now.UtcTicks,
            ExpiresTicks = (now + life).UtcTicks,
        };
        db.Invitations.Add(row);
        await db.SaveChangesAsync(cancellation).ConfigureAwait(false);
        return (row, secret);
    }

    /// <summary>The link of a secret while it works; null otherwise.</summary>
    public async Task<InvitationRow?> FindAsync(string? secret, CancellationToken cancellation)
    {
        if (secret is not { Length: > 0 and <= 100 })
        {
            return null;
        }

        string hash = Secret.Hash(secret);
        long now = clock.GetUtcNow().UtcTicks;
        return await db.Invitations.AsNoTracking()
            .FirstOrDefaultAsync(i => i.SecretHash == hash && i.EndedTicks == null && i.ExpiresTicks > now, cancellation)
            .ConfigureAwait(false);
    }

    /// <summary>Whether a link opens a club that has nothing on record yet, so that its name is asked for.</summary>
    public async Task<bool> OpensClubAsync(InvitationRow invitation, CancellationToken cancellation) =>
        invitation.MadeBy is null
        && !await db.Clubs.AnyAsync(c => c.Club == invitation.Club && c.Last > 0, cancellation).ConfigureAwait(false);

    /// <summary>Ends a link. Of several who try at once, one ends it: the others hear false.</summary>
    public async Task<bool> EndAsync(string club, string invitation, CancellationToken cancellation)
    {
        long now = clock.GetUtcNow().UtcTicks;
        return await db.Invitations
            .Where(i => i.Club == club && i.Invitation == invitation && i.EndedTicks == null)
            .ExecuteUpdateAsync(i => i.SetProperty(x => x.EndedTicks, now), cancellation).ConfigureAwait(false) == 1;
    }

    /// <summary>Ends every link that a server made for a first keeper: of several starts, or servers, one lets somebody in.</summary>
    public async Task EndFirstAsync(CancellationToken cancellation)
    {
        long now = clock.GetUtcNow().UtcTicks;
        await db.Invitations
            .Where(i => i.MadeBy == null && i.EndedTicks == null)
            .ExecuteUpdateAsync(i => i.SetProperty(x => x.EndedTicks, now), cancellation).ConfigureAwait(false);
    }

    /// <summary>A club's links that still work, and those that ended within the last month.</summary>
    public async Task<IReadOnlyList<InvitationRow>> ListAsync(string club, CancellationToken cancellation)
    {
        long since = (clock.GetUtcNow() - Longest).UtcTicks;
        return await db.Invitations.AsNoTracking()
            .Where(i => i.Club == club && (i.EndedTicks == null || i.EndedTicks > since) && i.ExpiresTicks > since)
            .OrderBy(i => i.MadeTicks)
            .ToListAsync(cancellation).ConfigureAwait(false);
    }
}
