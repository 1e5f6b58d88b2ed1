using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Replica.Tests.World;

/// <summary>Facts as members record them, and clubs as they are compared.</summary>
internal static class Said
{
    public static Fact Hold(string reason) => new Held("heron", reason);

    public static Fact Name(string name) => new ThingSet(Things.Boat, "heron", new Dictionary<string, string?> { ["name"] = name });

    /// <summary>The reasons of a club's holds, each as often as it was recorded.</summary>
    public static string[] Holds(Club club) => [.. club.All().Select(r => r.Fact).OfType<Held>().Select(h => h.Reason).Order(StringComparer.Ordinal)];
}
