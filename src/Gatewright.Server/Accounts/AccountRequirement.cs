using System.Security.Claims;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Authorization;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Accounts;

/// <summary>Asks for an account, whatever its clubs.</summary>
internal sealed record AccountRequirement : IAuthorizationRequirement;

/// <summary>Looks the account up at each request: a session of one that was ended a moment ago is worth nothing.</summary>
internal sealed class AccountRequirementHandler(StoreDb db) : AuthorizationHandler<AccountRequirement>
{
    protected override async Task HandleRequirementAsync(AuthorizationHandlerContext context, AccountRequirement requirement)
    {
        if (context.User.FindFirstValue(ClaimTypes.NameIdentifier) is { } id
            && await db.Users.AsNoTracking().AnyAsync(a => a.Id == id).ConfigureAwait(false))
        {
            context.Succeed(requirement);
        }
    }
}
