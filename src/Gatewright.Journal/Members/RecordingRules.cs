using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Members;

/// <summary>Which role records what.</summary>
public static class RecordingRules
{
    private static readonly Type[] OfCoaches =
        [typeof(Reported), typeof(Held), typeof(Released), typeof(Noted), typeof(PhotoTaken), typeof(Retracted)];

    /// <summary>Whether a role may record a fact.</summary>
    /// <remarks>
    /// Crew tell of what happened to a boat, or what is broken on it: only of those their link names, which is for whoever
    /// asks this to see to. Anybody else who records may hold a boat ashore; lifting a hold takes a keeper or a coach. A kind that this program does
    /// not know comes from a newer one and is kept and passed on for those who record all kinds.
    /// </remarks>
    public static bool May(Role role, Fact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return May(role, fact.GetType(), fact is ThingSet set ? set.Thing : (fact as Noted)?.Thing);
    }

    /// <summary>Whether a role may record facts of a kind, before there is one.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <param name="role">The role.</param>
    /// <param name="thing">The kind of thing it is of, one of <see cref="Things"/>: properties and notes go by that. Null asks for every kind of thing.</param>
    public static bool May<T>(Role role, string? thing = null)
        where T : Fact => May(role, typeof(T), thing);

    /// <summary>What of a kind is meant, where the kind alone does not say.</summary>
    public static string Detail(Fact fact) => fact is ThingSet set ? $" of a {set.Thing}" : string.Empty;

    private static bool May(Role role, Type kind, string? thing) => role switch
    {
        Role.Keeper => true,
        Role.Helper => kind != typeof(Released) && (kind != typeof(ThingSet) || !IsOfKeepers(thing)),
        Role.Crew => kind == typeof(Reported) || (kind == typeof(Noted) && thing == Things.Boat),
        Role.Coach => OfCoaches.Contains(kind),
        _ => false,
    };

    private static bool IsOfKeepers(string? thing) => thing is null or Things.Standard or Things.Settings or Things.Target or Things.Rig;
}
