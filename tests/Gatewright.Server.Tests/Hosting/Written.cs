using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;

namespace Gatewright.Server.Tests.Hosting;

/// <summary>Entries as a member's phone writes them.</summary>
internal static class Written
{
    private static int _counter;

    public static Entry By(string member, string club, Fact fact, DateTimeOffset? at = null)
    {
        (string kind, int version, byte[] body) = FactKinds.Write(fact);
        DateTimeOffset now = at ?? DateTimeOffset.UtcNow;
        return new()
        {
            Id = Guid.CreateVersion7(now),
            Club = club,
            Member = member,
            Device = "phone",
            Time = new(now.ToUnixTimeMilliseconds(), Interlocked.Increment(ref _counter)),
            Kind = kind,
            Version = version,
            Body = body,
        };
    }

    public static Entry Hold(string member, string club, string reason = "knocked") => By(member, club, new Held("boat-1", reason));

    public static Entry Boat(string member, string club, string key, string name) => By(
        member, club, new ThingSet(Things.Boat, key, new Dictionary<string, string?> { ["name"] = name, ["class"] = "8+" }));
}
