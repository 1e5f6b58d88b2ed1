using System.Security.Claims;
using System.Text.Json;
using Gatewright.Journal.Members;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Members;

/// <summary>A crew's way in: a link that shows some boats, and can be revoked.</summary>
internal static class CrewLink
{
    /// <summary>The claim that holds the link's id.</summary>
    public const string Claim = "gatewright:crew-link";

    /// <summary>The claim that holds the club it is of.</summary>
    public const string ClubClaim = "gatewright:crew-club";

    /// <summary>The cookie scheme of those who came by a link.</summary>
    public const string Scheme = "crew";

    /// <summary>What those who came by a link are known as.</summary>
    public static ClaimsPrincipal Principal(InvitationRow link) =>
        new(new ClaimsIdentity([new(Claim, link.Invitation), new(ClubClaim, link.Club)], Scheme));

    /// <summary>What a link shows of a club; null when it is another club's, was revoked or has expired.</summary>
    public static async Task<ClubAccess?> FindAsync(
        StoreDb db, string club, string link, DateTimeOffset now, CancellationToken cancellation)
    {
        InvitationRow? row = await db.Invitations.AsNoTracking()
            .FirstOrDefaultAsync(i => i.Club == club && i.Invitation == link, cancellation).ConfigureAwait(false);
        return row is { Role: "crew", EndedTicks: null, Boats: { } boats } && row.ExpiresTicks > now.UtcTicks
            ? new(club, row.Invitation, Role.Crew, JsonSerializer.Deserialize(boats, ServerJson.Default.StringArray)!.ToHashSet())
            : null;
    }
}
