using Gatewright.Journal.Members;

namespace Gatewright.Server.Members;

/// <summary>What an endpoint of a club asks for.</summary>
public enum ClubRight
{
    /// <summary>See boats and their verdicts; crew only theirs.</summary>
    SeeBoats,

    /// <summary>Tell of what happened to a boat that may be seen.</summary>
    Report,

    /// <summary>Read the club's journal and its photos.</summary>
    ReadJournal,

    /// <summary>Add to the journal; which kinds depends on the role.</summary>
    Record,

    /// <summary>Look after members, invitations and the club as a whole.</summary>
    Keep,
}

/// <summary>What each role may.</summary>
public static class ClubRights
{
    /// <summary>The name of the policy that asks for a right.</summary>
    public static string Policy(this ClubRight right) => "club:" + right;

    /// <summary>Whether a role may.</summary>
    public static bool May(this Role role, ClubRight right) => right switch
    {
        ClubRight.SeeBoats or ClubRight.Report => true,
        ClubRight.ReadJournal or ClubRight.Record => role != Role.Crew,
        _ => role == Role.Keeper,
    };
}
