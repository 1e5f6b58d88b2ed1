using Gatewright.Server.Accounts;
using Gatewright.Server.Members;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Identity;

namespace Gatewright.Server.Starting;

/// <summary>A password set by whoever looks after the machine, for somebody who has forgotten theirs.</summary>
internal static class NewPassword
{
    /// <summary>Sets a random one, and ends every session and lock of the account.</summary>
    /// <returns>The password; null when nobody signs in by the name.</returns>
    public static async Task<string?> SetAsync(IServiceProvider services, string name)
    {
        await using AsyncServiceScope scope = services.CreateAsyncScope();
        UserManager<Account> accounts = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        if (await accounts.FindByNameAsync(name).ConfigureAwait(false) is not { } account)
        {
            return null;
        }

        string password = Secret.New()[..20];
        await accounts.RemovePasswordAsync(account).ConfigureAwait(false);
        await accounts.AddPasswordAsync(account, password).ConfigureAwait(false);
        await accounts.ResetAccessFailedCountAsync(account).ConfigureAwait(false);
        await accounts.SetLockoutEndDateAsync(account, null).ConfigureAwait(false);
        await accounts.UpdateSecurityStampAsync(account).ConfigureAwait(false);
        await scope.ServiceProvider.GetRequiredService<SignInLog>()
            .AddAsync("password-set", account.Id, null, CancellationToken.None).ConfigureAwait(false);
        return password;
    }
}
