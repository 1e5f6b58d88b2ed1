namespace Gatewright.Store.Schema;

/// <summary>An account's place in a club.</summary>
public sealed class MembershipRow
{
    /// <summary>The club; every key starts with it.</summary>
    public required string Club { get; set; }

    /// <summary>The member's id in that club's journal.</summary>
    public required string Member { get; set; }

    /// <summary>The account; null once the member has left and the name is gone.</summary>
    public string? AccountId { get; set; }

    /// <summary>keeper, helper, coach or crew.</summary>
    public required string Role { get; set; }
}
