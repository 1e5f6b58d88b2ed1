using Gatewright.Server.Problems;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Identity;

namespace Gatewright.Server.Accounts;

/// <summary>What somebody who is signed in changes of their own account, by whichever page or program.</summary>
internal sealed class OwnAccount(
    UserManager<Account> accounts, SignInManager<Account> signIn, SignIns signIns, Leaving leaving, SignInLog log)
{
    /// <summary>Characters in the name others see: 100.</summary>
    public const int LongestName = 100;

    /// <summary>Changes the name others see, or tells what is wrong with it.</summary>
    public async Task<Fields> RenameAsync(HttpContext context, string? displayName)
    {
        var wrong = new Fields();
        wrong.ExpectLine(displayName, "displayName", LongestName);
        if (!wrong.Any)
        {
            Account account = await OfAsync(context).ConfigureAwait(false);
            account.DisplayName = displayName!.Trim();
            await accounts.UpdateAsync(account).ConfigureAwait(false);
        }

        return wrong;
    }

    /// <summary>Changes the password, and so signs out every other device; or tells what is wrong.</summary>
    public async Task<Fields> ChangePasswordAsync(HttpContext context, string? password, string? newPassword)
    {
        var wrong = new Fields();
        PasswordRules.Check(wrong, newPassword, "newPassword");
        Account account = await OfAsync(context).ConfigureAwait(false);
        wrong.Expect(
            wrong.Any || await IsTheirsAsync(account, password).ConfigureAwait(false),
            "password",
            "the password as it is now; after ten wrong ones a wait of ten minutes");
        if (wrong.Any)
        {
            return wrong;
        }

        IdentityResult changed = await accounts.ChangePasswordAsync(account, password!, newPassword!).ConfigureAwait(false);
        wrong.Expect(changed.Succeeded, "newPassword", string.Join(' ', changed.Errors.Select(e => e.Description)));
        if (changed.Succeeded)
        {
            await signIn.RefreshSignInAsync(account).ConfigureAwait(false);
            await log.AddAsync("password-changed", account.Id, null, context.RequestAborted).ConfigureAwait(false);
        }

        return wrong;
    }

    /// <summary>Ends the account and signs out; or tells why not.</summary>
    public async Task<Fields> EndAsync(HttpContext context, string? password)
    {
        var wrong = new Fields();
        Account account = await OfAsync(context).ConfigureAwait(false);
        wrong.Expect(
            await IsTheirsAsync(account, password).ConfigureAwait(false), "password", "your password, so that nobody else ends your account");
        if (!wrong.Any && await leaving.EndAsync(account, context.RequestAborted).ConfigureAwait(false) is { } club)
        {
            wrong.Expect(false, "club", $"another keeper first: you are the last one of {club}");
        }

        if (!wrong.Any)
        {
            await signIns.OutAsync(context).ConfigureAwait(false);
        }

        return wrong;
    }

    private async Task<Account> OfAsync(HttpContext context) =>
        await accounts.GetUserAsync(context.User).ConfigureAwait(false)
        ?? throw new InvalidOperationException("Nobody is signed in: the route asks for an account.");

    /// <summary>Counts wrong tries like a sign-in does: a borrowed phone is no way to try passwords.</summary>
    private async Task<bool> IsTheirsAsync(Account account, string? password) =>
        password is { Length: > 0 and <= PasswordRules.Longest }
        && (await signIn.CheckPasswordSignInAsync(account, password, lockoutOnFailure: true).ConfigureAwait(false)).Succeeded;
}
