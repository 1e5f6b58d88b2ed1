using Microsoft.AspNetCore.Identity;

namespace Gatewright.Store.Schema;

/// <summary>Somebody who signs in. The only place where a name is kept: entries name members by id.</summary>
public sealed class Account : IdentityUser
{
    /// <summary>What the others see; "former member" once the account is closed.</summary>
    [PersonalData]
    public string DisplayName { get; set; } = string.Empty;
}
