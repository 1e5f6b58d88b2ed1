using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Identity;

namespace Gatewright.Server.Accounts;

/// <summary>Signing in and out, joining a club, coming in by a crew's link.</summary>
internal static class AccountEndpoints
{
    /// <summary>Adds them to the routes.</summary>
    public static void MapAccounts(this RouteGroupBuilder api)
    {
        api.MapGet("/session", async (HttpContext context, SignIns signIns) =>
                TypedResults.Ok(await signIns.SessionAsync(context).ConfigureAwait(false)))
            .AllowAnonymous()
            .WithSummary("Who is signed in, their clubs, and the token that every change carries in X-Gatewright-Token.");
        api.MapPost("/session", SignInAsync)
            .AllowAnonymous().RequireRateLimiting(RateLimits.SignIn)
            .WithSummary("Sign in by name and password.");
        api.MapDelete("/session", async (HttpContext context, SignIns signIns) =>
            {
                await signIns.OutAsync(context).ConfigureAwait(false);
                return TypedResults.NoContent();
            })
            .AllowAnonymous()
            .WithSummary("Sign out.");
        api.MapPost("/invitation", SeeInvitationAsync)
            .AllowAnonymous().RequireRateLimiting(RateLimits.SignIn)
            .WithSummary("What an invitation is for.");
        api.MapPost("/join", JoinAsync)
            .AllowAnonymous().RequireRateLimiting(RateLimits.SignIn)
            .WithSummary("Accept an invitation: with a new account, or with the one that is signed in.");
        api.MapPost("/crew", CrewAsync)
            .AllowAnonymous().RequireRateLimiting(RateLimits.SignIn)
            .WithSummary("Come in by a crew's link, to see the boats it names.");
    }

    private static async Task<Results<Ok<Session>, ProblemHttpResult>> SignInAsync(
        HttpContext context, SignInRequest request, SignIns signIns)
    {
        SignInResult result = await signIns.ByPasswordAsync(request.Name, request.Password, context.RequestAborted).ConfigureAwait(false);
        return result.Succeeded ? TypedResults.Ok(await signIns.SessionAsync(context).ConfigureAwait(false)) : Refused();
    }

    /// <summary>The same words whether the name, the password or too many tries were at fault: nothing is given away.</summary>
    internal static ProblemHttpResult Refused() => Problem.Of(
        StatusCodes.Status401Unauthorized,
        "Not signed in",
        "Name and password do not go together, or there were too many tries: look at both, or wait ten minutes.");

    private static async Task<Results<Ok<InvitationSeen>, ProblemHttpResult>> SeeInvitationAsync(
        HttpContext context, SecretRequest request, Invitations invitations, Boats.OpenClubs clubs)
    {
        InvitationRow? row = await invitations.FindAsync(request.Secret, context.RequestAborted).ConfigureAwait(false);
        if (row is null)
        {
            return Problem.NotFound("invitation that still works");
        }

        string? name = await invitations.OpensClubAsync(row, context.RequestAborted).ConfigureAwait(false)
            ? null
            : (await clubs.OpenAsync(row.Club, context.RequestAborted).ConfigureAwait(false)).Name;
        return TypedResults.Ok(new InvitationSeen(row.Club, name, row.Role, row.Label));
    }

    private static async Task<Results<Ok<Session>, ProblemHttpResult>> JoinAsync(
        HttpContext context, JoinRequest request, Joining joining, SignIns signIns, UserManager<Account> accounts, SignInManager<Account> signIn)
    {
        Account? signedIn = await accounts.GetUserAsync(context.User).ConfigureAwait(false);
        (Account? account, Fields wrong) = await joining.AcceptAsync(request, signedIn, context.RequestAborted).ConfigureAwait(false);
        if (account is null)
        {
            return Problem.Fields(wrong.Errors);
        }

        if (signedIn is null)
        {
            await signIn.SignInAsync(account, isPersistent: true).ConfigureAwait(false);
        }

        return TypedResults.Ok(await signIns.SessionAsync(context).ConfigureAwait(false));
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> CrewAsync(
        HttpContext context, SecretRequest request, Invitations invitations)
    {
        InvitationRow? row = await invitations.FindAsync(request.Secret, context.RequestAborted).ConfigureAwait(false);
        if (row is not { Role: "crew" })
        {
            return Problem.NotFound("crew's link that still works");
        }

        await context.SignInAsync(CrewLink.Scheme, CrewLink.Principal(row), new() { IsPersistent = true }).ConfigureAwait(false);
        return TypedResults.NoContent();
    }
}
