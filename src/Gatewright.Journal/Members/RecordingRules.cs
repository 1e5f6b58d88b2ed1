using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Members;

/// <summary>Which role records what.</summary>
public static class RecordingRules
{
    /// <summary>Whether a role may record a fact.</summary>
    /// <remarks>
    /// Crew tell of what happened to a boat, or what is broken on it: only of those their link names, which is for whoever
    /// asks this to see to. Anybody else who records may hold a boat ashore; lifting a hold takes a keeper or a coach. A kind that this program does
    /// not know comes from a newer one and is kept and passed on for those who record all kinds.
    /// </remarks>
    public static bool May(Role role, Fact fact) => role switch
    {
        Role.Keeper => true,
        Role.Helper => fact is not (Released or ThingSet { Thing: Things.Standard or Things.Settings or Things.Target or Things.Rig }),
        Role.Crew => fact is Reported or Noted { Thing: Things.Boat },
        Role.Coach => fact is Reported or Held or Released or Noted or PhotoTaken or Retracted,
        _ => false,
    };

    /// <summary>What of a kind is meant, where the kind alone does not say.</summary>
    public static string Detail(Fact fact) => fact is ThingSet set ? $" of a {set.Thing}" : string.Empty;
}
