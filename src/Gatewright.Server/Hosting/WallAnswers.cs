using System.Security.Claims;
using Gatewright.Server.Accounts;
using Gatewright.Server.Members;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Authorization.Policy;

namespace Gatewright.Server.Hosting;

/// <summary>
/// Answers those who may not: a stranger hears 401, a member whose role does not do this 403, and somebody who is in no
/// way part of the club 404, as if it were not there.
/// </summary>
internal sealed class WallAnswers : IAuthorizationMiddlewareResultHandler
{
    private readonly AuthorizationMiddlewareResultHandler _usual = new();

    /// <inheritdoc/>
    public Task HandleAsync(
        RequestDelegate next, HttpContext context, AuthorizationPolicy policy, PolicyAuthorizationResult authorizeResult)
    {
        bool asksForClub = policy.Requirements.OfType<ClubRequirement>().Any();
        if (authorizeResult.Forbidden && asksForClub && context.Features.Get<ClubAccess>() is null)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return Task.CompletedTask;
        }

        // Somebody who comes with a session of an account that is no more is a stranger.
        bool asksForAccount = policy.Requirements.OfType<AccountRequirement>().Any();
        if (authorizeResult.Forbidden && asksForAccount && context.User.HasClaim(c => c.Type == ClaimTypes.NameIdentifier))
        {
            authorizeResult = PolicyAuthorizationResult.Challenge();
        }

        return _usual.HandleAsync(next, context, policy, authorizeResult);
    }
}
