using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What a gate was at one point of the stroke on a day, corrected as today's readings are.</summary>
/// <param name="Day">The day.</param>
/// <param name="At">Where in the stroke.</param>
/// <param name="Pitch">The pitch on a level boat, with its standard uncertainty.</param>
/// <param name="Repeats">How many readings it rests on.</param>
/// <param name="IsBeforeChange">Whether the gate was changed since.</param>
public sealed record GateDay(DateOnly Day, StrokePoint At, Estimate Pitch, int Repeats, bool IsBeforeChange)
{
    /// <summary>How the pitch alone is judged by a standard; null between the stations, where nothing is.</summary>
    public Verdict? Judged(Standard standard, DecisionRule rule)
    {
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(rule);
        if (At.Station is not { } station)
        {
            return null;
        }

        StationLimits limits = standard.At(station);
        (double value, double u) = (Pitch.Value.Degrees, Pitch.U.Degrees);
        Verdict floor = rule.Floor(DecisionRule.Below(limits.Floor, value, u));
        Verdict quality = rule.Limits(value, u, limits.Lowest.Degrees, limits.Highest.Degrees).Verdict;
        return (Verdict)Math.Max((int)floor, (int)quality);
    }
}

/// <summary>A gate over the days: what it was whenever it was read, and when it was mended.</summary>
/// <param name="Days">What it was, oldest first; of one day from the catch to the finish.</param>
/// <param name="Mends">The days it was mended on, oldest first.</param>
public sealed record GateHistory(IReadOnlyList<GateDay> Days, IReadOnlyList<DateOnly> Mends)
{
    /// <summary>The history of a gate; nothing while its boat's class is not known.</summary>
    /// <param name="club">The club.</param>
    /// <param name="boat">The boat.</param>
    /// <param name="gate">The gate.</param>
    /// <param name="settings">How readings are corrected.</param>
    public static GateHistory Of(Club club, BoatView boat, GatePlace gate, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(settings);
        IReadOnlyList<DateOnly> mends = [.. boat.Records
            .Where(r => r.Fact is GateMended mended && mended.Seat == gate.Seat && mended.Side == gate.Side)
            .Select(Day.Of)
            .Concat(boat.Jobs.Where(j => j.Gates.Contains(gate)).Select(j => j.DoneOn).OfType<DateOnly>())
            .Distinct()
            .Order()];
        if (boat.Class is not { } boatClass)
        {
            return new([], mends);
        }

        var days = new BoatDays(boat.Records);
        var changes = new GateChanges(boat);
        var readings = new ReadingsView(club, boat.Records, boatClass, settings);
        return new(
            [.. boat.Records
                .Where(r => r.Fact is ReadingTaken { Item: ReadItem.Gate } taken && taken.Seat == gate.Seat && taken.Side == gate.Side)
                .GroupBy(r => (Day: days.Of(r), IsBefore: changes.AreAfter(r)))
                .OrderBy(g => g.Key.Day)
                .ThenByDescending(g => g.Key.IsBefore)
                .SelectMany(g => CorrectedReadings.Of(readings.Readings(g), settings).Pitches
                    .Select(p => new GateDay(g.Key.Day, p.At, p.Estimate, p.Repeats, g.Key.IsBefore)))],
            mends);
    }
}
