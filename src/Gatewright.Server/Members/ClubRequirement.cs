using System.Security.Claims;
using Gatewright.Journal.Members;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Authorization;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Members;

/// <summary>Asks for a right in the club that the route names.</summary>
internal sealed record ClubRequirement(ClubRight ClubRight) : IAuthorizationRequirement;

/// <summary>
/// The wall between clubs: looks up, at each request, what whoever asks is in the club the route names. A membership
/// that ended or a link that was revoked a moment ago lets nobody in.
/// </summary>
internal sealed class ClubRequirementHandler(StoreDb db, TimeProvider clock) : AuthorizationHandler<ClubRequirement>
{
    protected override async Task HandleRequirementAsync(AuthorizationHandlerContext context, ClubRequirement requirement)
    {
        if (context.Resource is HttpContext http
            && http.GetRouteValue("club") is string club
            && await FindAsync(context.User, club, http.RequestAborted).ConfigureAwait(false) is { } access)
        {
            http.Features.Set(access);
            if (access.Role.May(requirement.ClubRight))
            {
                context.Succeed(requirement);
            }
        }
    }

    private async Task<ClubAccess?> FindAsync(ClaimsPrincipal user, string club, CancellationToken cancellation)
    {
        if (user.FindFirstValue(ClaimTypes.NameIdentifier) is { } account)
        {
            MembershipRow? membership = await db.Memberships.AsNoTracking()
                .FirstOrDefaultAsync(m => m.Club == club && m.AccountId == account, cancellation).ConfigureAwait(false);
            return Roles.Of(membership?.Role) is { } role ? new(club, membership!.Member, role, null) : null;
        }

        return user.FindFirstValue(CrewLink.Claim) is { } link
            ? await CrewLink.FindAsync(db, club, link, clock.GetUtcNow(), cancellation).ConfigureAwait(false)
            : null;
    }
}
