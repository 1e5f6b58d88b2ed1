using System.Security.Claims;
using Gatewright.Server.Boats;
using Gatewright.Server.Members;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Accounts;

/// <summary>Signing in and out, by whichever page or program.</summary>
internal sealed class SignIns(
    StoreDb db,
    UserManager<Account> accounts,
    SignInManager<Account> signIn,
    SignInLog log,
    OpenClubs clubs,
    IAntiforgery antiforgery)
{
    // Checked for a name that nobody has, so that the time an answer takes does not tell whether there is one.
    private static readonly Account Nobody = new() { UserName = "nobody" };
    private static readonly string NobodysHash = new PasswordHasher<Account>().HashPassword(Nobody, Secret.New());

    /// <summary>Signs in by a password, or tells why not.</summary>
    public async Task<SignInResult> ByPasswordAsync(string? name, string? password, CancellationToken cancellation)
    {
        // A control character is in no name, and some stores take none even to look for.
        if (name is not { Length: > 0 and <= 256 } || name.Any(char.IsControl)
            || password is not { Length: > 0 and <= PasswordRules.Longest })
        {
            return SignInResult.Failed;
        }

        Account? account = await accounts.FindByNameAsync(name).ConfigureAwait(false);
        if (account is null)
        {
            accounts.PasswordHasher.VerifyHashedPassword(Nobody, NobodysHash, password);
            await log.AddAsync("refused", null, null, cancellation).ConfigureAwait(false);
            return SignInResult.Failed;
        }

        SignInResult result = await signIn.PasswordSignInAsync(account, password, isPersistent: true, lockoutOnFailure: true)
            .ConfigureAwait(false);
        await log.AddAsync(Outcome(result), account.Id, null, cancellation).ConfigureAwait(false);
        return result;
    }

    /// <summary>Signs in by a passkey.</summary>
    public async Task<SignInResult> ByPasskeyAsync(string credential, CancellationToken cancellation)
    {
        SignInResult result = await signIn.PasskeySignInAsync(credential).ConfigureAwait(false);
        string? account = result.Succeeded ? accounts.GetUserId(signIn.Context.User) : null;
        await log.AddAsync(result.Succeeded ? "signed-in-by-passkey" : "refused", account, null, cancellation).ConfigureAwait(false);
        return result;
    }

    /// <summary>Signs out, whichever way somebody came in.</summary>
    public async Task OutAsync(HttpContext context)
    {
        await signIn.SignOutAsync().ConfigureAwait(false);
        await context.SignOutAsync(CrewLink.Scheme).ConfigureAwait(false);
    }

    /// <summary>Who is signed in.</summary>
    public async Task<Session> SessionAsync(HttpContext context)
    {
        string token = antiforgery.GetAndStoreTokens(context).RequestToken!;
        Account? account = context.User.FindFirstValue(ClaimTypes.NameIdentifier) is { } id
            ? await db.Users.AsNoTracking().FirstOrDefaultAsync(a => a.Id == id, context.RequestAborted).ConfigureAwait(false)
            : null;
        return account is null
            ? new(null, null, [], token)
            : new(account.UserName, account.DisplayName, await ClubsAsync(account.Id, context.RequestAborted).ConfigureAwait(false), token);
    }

    /// <summary>The clubs an account belongs to.</summary>
    public async Task<IReadOnlyList<SessionClub>> ClubsAsync(string account, CancellationToken cancellation)
    {
        List<MembershipRow> memberships = await db.Memberships.AsNoTracking()
            .Where(m => m.AccountId == account)
            .OrderBy(m => m.Club)
            .ToListAsync(cancellation).ConfigureAwait(false);
        var found = new List<SessionClub>();
        foreach (MembershipRow membership in memberships)
        {
            OpenClub club = await clubs.OpenAsync(membership.Club, cancellation).ConfigureAwait(false);
            found.Add(new(membership.Club, club.Name, membership.Member, membership.Role));
        }

        return found;
    }

    private static string Outcome(SignInResult result) =>
        result.Succeeded ? "signed-in" : result.IsLockedOut ? "locked-out" : "refused";
}
