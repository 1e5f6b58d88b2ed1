using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Checking;

/// <summary>
/// What is on record of one boat over time, with what was read before a gate was last changed kept apart.
/// </summary>
/// <param name="Current">The readings that speak of the boat as it is.</param>
/// <param name="Old">The readings that speak of gates as they were before something was done to them.</param>
/// <param name="Reports">What was told since the gates concerned were mended.</param>
public sealed record BoatRecord(BoatReadings Current, IReadOnlyList<Reading> Old, IReadOnlyList<Report> Reports)
{
    /// <summary>The last that was done to each gate, where its day is known.</summary>
    public IReadOnlyList<GateChange> Changes { get; init; } = [];

    /// <summary>A boat of which only readings are on record, none of them old.</summary>
    public static BoatRecord Of(BoatReadings readings) => new(readings, [], []);

    /// <summary>
    /// Sorts a boat's record by its dates: of each gate the readings from the day of its last change on are current.
    /// Readings of different days are combined only while nothing was done to the gate in between; what has no date
    /// is taken as new.
    /// </summary>
    /// <param name="all">All readings.</param>
    /// <param name="reports">All that was told.</param>
    /// <param name="mendings">All that was mended.</param>
    public static BoatRecord ByDate(BoatReadings all, IReadOnlyList<Report> reports, IReadOnlyList<Mended> mendings)
    {
        ArgumentNullException.ThrowIfNull(all);
        ArgumentNullException.ThrowIfNull(reports);
        ArgumentNullException.ThrowIfNull(mendings);
        Dictionary<GatePlace, GateChange> changed = Dated(reports, mendings)
            .GroupBy(c => c.Gate)
            .ToDictionary(g => g.Key, g => g.OrderBy(c => c.On).Last());
        ILookup<bool, Reading> byAge = all.Readings.ToLookup(r =>
            r.Item != ReadItem.Sleeve && r.Lie.Date < changed.GetValueOrDefault(r.Gate)?.On);
        return new(
            all with { Readings = [.. byAge[false]] },
            [.. byAge[true]],
            [.. reports.Where(r => !mendings.Any(m => Settles(m, r)))])
        {
            Changes = [.. changed.Values.OrderBy(c => c.Gate)],
        };
    }

    /// <summary>Checks the boat as it is now, by the readings of each gate's last days.</summary>
    /// <exception cref="ArgumentException">Nothing was read since the last change.</exception>
    public BoatCheck Check(CheckSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ReadingsNow now = Current.Now(settings.DaysCombined, settings.Diagnosing.Measuring);
        var context = new BoatContext
        {
            Reports = Reports,
            LastGood = LastGood(settings),
            LeftAside = Current.Readings.Count - Current.Latest(settings.DaysCombined).Readings.Count,
            Changes = now.Changes,
        };
        return BoatCheck.Of(now.Readings, context, settings);
    }

    /// <summary>Of one day a mending comes after what was told.</summary>
    private static IEnumerable<GateChange> Dated(IReadOnlyList<Report> reports, IReadOnlyList<Mended> mendings) =>
    [
        .. reports.Select(Change).OfType<GateChange>(),
        .. mendings.Select(m => m.Date is { } on ? new GateChange(m.Gate, on, GateChangedBy.Mending) : null).OfType<GateChange>(),
    ];

    private static GateChange? Change(Report report) => report is { Gate: { } gate, Date: { } on } && report.Kind.ChangesTheGate()
        ? new(gate, on, report.Kind == ReportKind.Knock ? GateChangedBy.Knock : GateChangedBy.Refitting)
        : null;

    /// <summary>A report counts until the gate it tells of is mended; one of the whole boat until any gate is.</summary>
    private static bool Settles(Mended mended, Report report) =>
        (report.Gate is null || report.Gate == mended.Gate)
        && mended.Date is { } day
        && (report.Date is null || report.Date <= day);

    /// <summary>How the pins of refitted riggers leaned before, where the gate was then found good.</summary>
    private Dictionary<GatePlace, PinLean> LastGood(CheckSettings settings)
    {
        HashSet<GatePlace> refitted = [.. Reports
            .Where(r => r.Kind == ReportKind.Refitted)
            .Select(r => r.Gate)
            .OfType<GatePlace>()];
        if (Old.Count == 0 || refitted.Count == 0)
        {
            return [];
        }

        BoatCheck then = BoatCheck.Of((Current with { Readings = Old }).Latest(settings.DaysCombined), BoatContext.None, settings);
        return then.Verdict.Gates
            .Where(g => g.Verdict == Verdict.Good && refitted.Contains(g.Gate))
            .ToDictionary(g => g.Gate, g => Lean(then.Diagnosis, g.Gate));
    }

    private static PinLean Lean(Diagnosis diagnosis, GatePlace gate)
    {
        GateDiagnosis found = diagnosis.Gates.Single(g => g.Gate == gate);
        return new(new(found.LeanAft.Value), new(found.LeanOut.Value));
    }
}
