using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Checking;

/// <summary>
/// Everything on record of one boat over time: readings of many days, what was told, what was mended.
/// </summary>
/// <param name="Readings">All readings.</param>
/// <param name="Reports">All that was told.</param>
/// <param name="Mendings">All that was mended.</param>
public sealed record BoatRecord(
    BoatReadings Readings, IReadOnlyList<Report> Reports, IReadOnlyList<Mended> Mendings)
{
    /// <summary>A boat of which only readings are on record.</summary>
    public static BoatRecord Of(BoatReadings readings) => new(readings, [], []);

    /// <summary>Checks the boat as it is now.</summary>
    /// <exception cref="ArgumentException">Nothing was read, or nothing since the last change.</exception>
    public BoatCheck Check(CheckSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return BoatCheck.Of(Current(), Context(settings), settings);
    }

    /// <summary>
    /// The readings that speak of the boat as it is: of each gate those from the day of its last change on. Readings
    /// of different days are combined only while nothing was done to the gate in between; one without a date is
    /// taken as new.
    /// </summary>
    public BoatReadings Current() => Readings with { Readings = [.. Readings.Readings.Where(r => !IsOld(r))] };

    private BoatContext Context(CheckSettings settings) => new()
    {
        Reports = [.. Reports.Where(r => !IsMendedSince(r))],
        LastGood = LastGood(settings),
    };

    /// <summary>A report counts until the gate it tells of is mended; one of the whole boat until any gate is.</summary>
    private bool IsMendedSince(Report report) => Mendings.Any(m =>
        (report.Gate is null || report.Gate == m.Gate) && m.Date is { } day && (report.Date is null || report.Date <= day));

    private bool IsOld(Reading reading) =>
        reading.Item != ReadItem.Sleeve
        && reading.Lie.Date is { } date
        && Changed(reading.Gate) is { } changed
        && date < changed;

    /// <summary>The last day something was done to a gate, or may have been.</summary>
    private DateOnly? Changed(GatePlace gate) => Reports
        .Where(r => r.Gate == gate && r.Kind.ChangesTheGate())
        .Select(r => r.Date)
        .Concat(Mendings.Where(m => m.Gate == gate).Select(m => m.Date))
        .Max();

    /// <summary>How the pins of refitted riggers leaned before, where the gate was then found good.</summary>
    private Dictionary<GatePlace, PinLean> LastGood(CheckSettings settings)
    {
        HashSet<GatePlace> refitted = [.. Reports
            .Where(r => r.Kind == ReportKind.Refitted)
            .Select(r => r.Gate)
            .OfType<GatePlace>()];
        List<Reading> old = [.. Readings.Readings.Where(IsOld)];
        if (old.Count == 0 || refitted.Count == 0)
        {
            return [];
        }

        BoatCheck then = BoatCheck.Of(Readings with { Readings = old }, BoatContext.None, settings);
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
