using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Replay;

/// <summary>All that a club tells of itself, as lines: how its boats stand and lie, jobs, holds, stores, gauges, racks, what changed.</summary>
internal static class ClubTold
{
    public const string Boat = "heron";
    public const string Round = "r1";

    /// <summary>A club looked at once.</summary>
    public static Task<IReadOnlyList<string>> OfAsync(Club club) =>
        OfAsync(club, ShedVerdicts.Of(club), SeenBoat.Of(club, new(new(club, Boat), Round), Station.Catch), new(club));

    /// <summary>A club with what was worked out of it while it grew.</summary>
    public static async Task<IReadOnlyList<string>> OfAsync(Club club, ShedVerdicts shed, SeenBoat seen, ChancesView counted) =>
    [
        .. await AskedAsync(shed),
        $"seen {Told(seen.Boat.Laid)}, at the tap {string.Join("; ", seen.Verdict?.Gates.SelectMany(g => g.Reasons.Select(r => $"{g.Gate} {r}")) ?? [])}",
        $"read in the round {Ids(seen.Boat.Readings)}",
        $"counted {counted.Found}",
        .. Lyings(club),
        .. ClubJobs.Of(club).All.Select(j => $"job {j.Planned.Entry.Id} open {j.IsOpen} steps {string.Join(' ', j.StepsDone.Order())} found {string.Join(' ', j.Found)} closed {j.ClosedOn} laid {Told(new RecheckTaken(club, j).Laid)}"),
        .. RigChanges.Of(club).Select(c => $"change {c.Planned.Entry.Id} {string.Join(' ', c.StepsDone.Order())}"),
        .. StoresView.Of(club).OrderBy(s => s.Key).Select(s => $"{s.Key}: {s.Value}"),
        .. GaugeView.All(club, MeasuringSettings.Default).Select(g => $"gauge {g.Gauge} {Ids(g.Checks)}"),
        .. RackView.All(club).Select(r => $"rack {r.Key} {r.Level}"),
        .. Changes.Between(club, new(2026, 5, 3), new(2026, 5, 4)).Select(Told),
        .. OpenReports.Of(new BoatView(club, Boat)).Select(r => $"report {r.Record.Entry.Id}"),
    ];

    /// <summary>The boats, judged.</summary>
    public static async Task<IReadOnlyList<string>> AskedAsync(ShedVerdicts shed) =>
        [.. (await shed.AllAsync()).Select(b => $"{b.View.Key} {b.View.Name} {b.Shown} ashore {b.StaysAshore} held {Ids(b.Holds)} read {b.LastRead} "
            + string.Join("; ", b.Check?.Verdict.Gates.SelectMany(g => g.Reasons.Select(r => $"{g.Gate} {r}").Concat(g.Pitches.Select(p => $"{g.Gate} {p}"))) ?? [])
            + $" changed {string.Join("; ", b.Changed?.Changes ?? [])} taken {string.Join("; ", b.Check?.Readings.Readings ?? [])}")];

    private static IEnumerable<string> Lyings(Club club)
    {
        var boat = new BoatView(club, Boat);
        BoatBerth berth = BoatBerth.Of(boat);
        yield return $"lies on {berth.Rack} {berth.Lie} {Told(berth.Last)}, usually {Laying.Usual(club, new(boat, Round))}";
        foreach (GateReading reading in BoatGates.Of(club, boat).SelectMany(gate => GateReadings.Of(club, boat, gate, 1)))
        {
            yield return $"{reading.Record.Entry.Id} {reading.Day} {reading.Holds} {Told(reading.Laid)}";
        }
    }

    private static string Told(ThingChange change) =>
        $"{change.About} {change.Readings} readings, {Ids(change.Facts)}, {string.Join("; ", change.Fields.Select(f => $"{f.Thing} {f.Field} {f.From} {f.To?.Value} {f.To?.Entry.Id}"))}";

    private static string Told(BoatLaid? laid) => laid?.ToString() ?? "not laid";

    private static string Ids(IEnumerable<Recorded> records) => string.Join(' ', records.Select(r => r.Entry.Id));
}
