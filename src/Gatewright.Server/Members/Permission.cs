namespace Gatewright.Server.Members;

/// <summary>What an endpoint of a club asks for.</summary>
public enum Permission
{
    /// <summary>See boats and their verdicts; crew only theirs.</summary>
    SeeBoats,

    /// <summary>Read the club's journal and its photos.</summary>
    ReadJournal,

    /// <summary>Add to the journal; which kinds depends on the role.</summary>
    Record,

    /// <summary>Look after members, invitations and the club as a whole.</summary>
    Keep,
}

/// <summary>What each role may.</summary>
public static class Permissions
{
    /// <summary>The name of the policy that asks for a permission.</summary>
    public static string Policy(this Permission permission) => "club:" + permission;

    /// <summary>Whether a role may.</summary>
    public static bool May(this Role role, Permission permission) => permission switch
    {
        Permission.SeeBoats => true,
        Permission.ReadJournal or Permission.Record => role != Role.Crew,
        _ => role == Role.Keeper,
    };
}
