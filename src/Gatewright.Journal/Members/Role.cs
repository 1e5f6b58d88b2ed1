namespace Gatewright.Journal.Members;

/// <summary>What a member is in a club.</summary>
public enum Role
{
    /// <summary>Looks after the boats and the members: may do everything.</summary>
    Keeper,

    /// <summary>Reads gates and mends them.</summary>
    Helper,

    /// <summary>Reads, reports, holds boats ashore.</summary>
    Coach,

    /// <summary>Sees the boats a link names and tells of what happened to them, and nothing else.</summary>
    Crew,
}

/// <summary>Roles as words.</summary>
public static class Roles
{
    /// <summary>What stands for a member who has left.</summary>
    public const string Former = "former";

    /// <summary>The roles an account can have: crew have a link instead.</summary>
    public static IReadOnlyList<Role> OfAccounts { get; } = [Role.Keeper, Role.Helper, Role.Coach];

    /// <summary>"keeper".</summary>
    public static string Word(this Role role) => role switch
    {
        Role.Keeper => "keeper",
        Role.Helper => "helper",
        Role.Coach => "coach",
        _ => "crew",
    };

    /// <summary>The role of a word; null for any other word, "former" among them.</summary>
    public static Role? Of(string? word) => word switch
    {
        "keeper" => Role.Keeper,
        "helper" => Role.Helper,
        "coach" => Role.Coach,
        "crew" => Role.Crew,
        _ => null,
    };
}
