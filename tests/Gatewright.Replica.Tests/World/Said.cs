using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Replica.Tests.World;

/// <summary>Facts as members record them, and clubs as they are compared.</summary>
internal static class Said
{
    public static Fact Hold(string reason) => new Held("heron", reason);

    public static Fact Name(string name) => new ThingSet(Things.Boat, "heron", new Dictionary<string, string?> { ["name"] = name });

    /// <summary>What the server takes for a picture: it looks at how the bytes begin (PNG, 12.12, signature).</summary>
    public static byte[] Picture(string what) => [0x89, .. "PNG\r\n\u001a\n"u8, .. System.Text.Encoding.UTF8.GetBytes(what)];

    /// <summary>The reasons of a club's holds, each as often as it was recorded.</summary>
    public static string[] Holds(Club club) => [.. club.All().Select(r => r.Fact).OfType<Held>().Select(h => h.Reason).Order(StringComparer.Ordinal)];
}
