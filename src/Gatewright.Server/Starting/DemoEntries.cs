using System.Reflection;
using Gatewright.Core.Checking;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Exchange.StoresFiles;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Server.Starting;

/// <summary>The example files as the journal of a club.</summary>
internal static class DemoEntries
{
    private const string ShedName = "The demo shed";

    /// <summary>The entries, in order.</summary>
    public static IReadOnlyList<Entry> Of(string club, string member, DateTimeOffset now)
    {
        var stamp = new RecordingStamp(member, "demo", default, now, () => Guid.CreateVersion7(now));
        using Stream shed = Open("shed.csv");
        using Stream rig = Open("rig.csv");
        ReadingsInput readings = ReadingsCsv.Read([new("shed.csv", shed), new("rig.csv", rig)], CheckSettings.Default.Diagnosing.Measuring);
        RecordedFile boats = ReadingsRecording.Entries(readings, Club.Empty(club), stamp);
        using Stream shelf = Open("stores.csv");
        StoresInput stores = StoresCsv.Read("stores.csv", shelf);
        RecordedFile parts = ReadingsRecording.Entries(stores.Stores, Club.Empty(club), stamp with { Clock = boats.After });
        (HybridTime time, _) = parts.After.Tick(now);
        (string kind, int version, byte[] body) = FactKinds.Write(
            new ThingSet(Things.Settings, "club", new Dictionary<string, string?> { ["name"] = ShedName }));
        var named = new Entry
        {
            Id = Guid.CreateVersion7(now), Club = club, Member = member, Device = "demo", Time = time, Kind = kind, Version = version, Body = body,
        };
        return [.. boats.Entries, .. parts.Entries, named];
    }

    private static Stream Open(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"The program was built without {name}.");
}
