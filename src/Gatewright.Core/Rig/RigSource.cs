namespace Gatewright.Core.Rig;

/// <summary>Where a target's value comes from. Tolerances are this project's, unless the club's guides or the club give them.</summary>
public enum RigSource
{
    /// <summary>World Championships 2017, rigging survey of the international federation: the median of the class.</summary>
    Survey,

    /// <summary>Clubs' published rigging guides: the middle of their range, which is the tolerance.</summary>
    ClubGuides,

    /// <summary>This project's judgement: no source was found.</summary>
    Ours,

    /// <summary>Follows from other targets by a definition.</summary>
    Computed,

    /// <summary>Set by the club for a class and crew.</summary>
    Club,

    /// <summary>Set by the club for the boat.</summary>
    Boat,
}
