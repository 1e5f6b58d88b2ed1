using System.Text.Json;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Facts;

/// <summary>Between the bodies of entries and the facts they are.</summary>
public static class FactKinds
{
    private static readonly FactKind[] All =
    [
        FactKind.Of("set", json => json.ThingSet),
        FactKind.Of("retract", json => json.Retracted),
        FactKind.Of("round-started", json => json.RoundStarted),
        FactKind.Of("round-ended", json => json.RoundEnded),
        FactKind.Of("boat-laid", json => json.BoatLaid),
        FactKind.Of("reading", json => json.ReadingTaken),
        FactKind.Of("rack-level", json => json.RackLevelRead),
        FactKind.Of("gauge-reversed", json => json.GaugeReversed),
        FactKind.Of("report", json => json.Reported),
        FactKind.Of("hold", json => json.Held),
        FactKind.Of("release", json => json.Released),
        FactKind.Of("job-planned", json => json.JobPlanned),
        FactKind.Of("step-done", json => json.StepDone),
        FactKind.Of("job-done", json => json.JobDone),
        FactKind.Of("job-dropped", json => json.JobDropped),
        FactKind.Of("mended", json => json.GateMended),
        FactKind.Of("stock-changed", json => json.StockChanged),
        FactKind.Of("stock-counted", json => json.StockCounted),
        FactKind.Of("note", json => json.Noted),
        FactKind.Of("photo", json => json.PhotoTaken),
        FactKind.Of("measure", json => json.MeasureTaken),
        FactKind.Of("oar-read", json => json.OarRead),
        FactKind.Of("change-planned", json => json.ChangePlanned),
        FactKind.Of("measure-set", json => json.MeasureSet),
        FactKind.Of("reading-kept", json => json.ReadingKept),
    ];

    private static readonly Dictionary<string, FactKind> ByName = All.ToDictionary(k => k.Name);
    private static readonly Dictionary<Type, FactKind> ByType = All.ToDictionary(k => k.Type);

    /// <summary>The names of all kinds this program knows.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Select(k => k.Name)];

    /// <summary>What entries of a fact are called: "job-planned".</summary>
    public static string NameOf<T>()
        where T : Fact => Of<T>.Name;

    /// <summary>Each kind with the version written today: what tells one program's reading of a journal from another's.</summary>
    internal static IEnumerable<string> NamesAndVersions => All.Select(k => FormattableString.Invariant($"{k.Name}/{k.Version}"));

    /// <summary>The fact an entry is; <see cref="UnknownFact"/> for a kind or version from a newer program.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="problem">Why a known kind's body cannot be read; null when it can, or when the kind is unknown.</param>
    /// <returns>Null when there is a problem.</returns>
    public static Fact? Read(Entry entry, out string? problem)
    {
        ArgumentNullException.ThrowIfNull(entry);
        problem = null;
        if (!ByName.TryGetValue(entry.Kind, out FactKind? kind) || !kind.Reads(entry.Version))
        {
            return new UnknownFact();
        }

        try
        {
            return kind.Read(entry.Version, entry.Body);
        }
        catch (JsonException broken)
        {
            problem = $"the body of a {entry.Kind} entry, at {broken.Path ?? "$"}: {broken.Message}";
            return null;
        }
    }

    /// <summary>A fact's kind, version and body.</summary>
    public static (string Kind, int Version, byte[] Body) Write(Fact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        FactKind kind = ByType[fact.GetType()];
        return (kind.Name, kind.Version, kind.Write(fact));
    }

    /// <summary>Asked for at every entry of a journal: looked up once.</summary>
    private static class Of<T>
        where T : Fact
    {
        public static readonly string Name = ByType[typeof(T)].Name;
    }
}
