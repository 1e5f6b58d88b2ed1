using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Numerics;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>A rigger on the way.</summary>
/// <param name="Gate">The gate it belongs to.</param>
/// <param name="Mark">What is written on it; null where nothing is on record: then the gate is to be written on it.</param>
public sealed record TravellingRigger(GatePlace Gate, string? Mark);

/// <summary>A reading of the quick check.</summary>
/// <param name="Item">What is read.</param>
/// <param name="Place">Where.</param>
/// <param name="Expected">
/// What it should show if nothing changed: what was known before, and how well riggers come back; null where nothing was known.
/// </param>
/// <param name="Floor">Of the pitch at the catch, degrees: below it the blade may dive, whatever was expected; null for all else.</param>
/// <param name="Before">What it was as the boat left; null where nothing was known.</param>
public sealed record QuickReading(RigItem Item, RigPlace Place, RigEstimate? Expected, double? Floor = null, RigEstimate? Before = null)
{
    // A floor is guarded: 95 % of the normal distribution, one-sided, as the boat is judged.
    private const double OneSided = 1.644854;


    /// <summary>The lowest figure that is nothing to wonder at; null where nothing was known.</summary>
    public double? Lowest => Expected is { } e ? e.Value - (RigComparison.Apart * e.U) : null;

    /// <summary>The highest figure that is nothing to wonder at; null where nothing was known.</summary>
    public double? Highest => Expected is { } e ? e.Value + (RigComparison.Apart * e.U) : null;

    /// <summary>Whether a figure below the floor would be nothing to wonder at: then that it is unchanged says nothing for it.</summary>
    public bool ReachesBelowFloor => Floor is { } floor && !(Lowest >= floor);

    /// <summary>The lowest figure that, read once, is surely above the floor; null where there is no floor.</summary>
    public double? SurelyAbove => Floor + (OneSided * ReadingU);

    /// <summary>Whether a figure that is nothing to wonder at would not be surely above the floor: it proves no change, and not that the boat may go out.</summary>
    public bool IsNearFloor => Floor is not null && !(Lowest >= SurelyAbove);

    /// <summary>The probability that the pitch lay above the floor as the boat left; null where either is not known.</summary>
    public double? AboveFloorBefore => Floor is { } floor && Before is { } before
        ? before.U > 0 ? Normal.Cdf((before.Value - floor) / before.U) : before.Value > floor ? 1 : 0
        : null;

    // A gauge of half degrees that repeats to 0.2°, its zero known to 0.2°, on a boat levelled by bubble: √(0.144² + 0.2² + 0.2² + 0.2²).
    internal const double ReadingU = 0.375;
}

/// <summary>
/// A boat taken to pieces for the road and put together again: its riggers in the order in which they come off and go on, and the few
/// readings that tell most once it stands.
/// </summary>
/// <param name="Rig">The rig as it leaves.</param>
/// <param name="Off">The riggers in the order in which they come off; they go on in the reverse.</param>
/// <param name="Check">The quick check, in the order in which it is walked; the level comes before it.</param>
public sealed record TravelSheet(RigOfBoat Rig, IReadOnlyList<TravellingRigger> Off, IReadOnlyList<QuickReading> Check)
{
    /// <summary>What to mind: lifting the boat and loosening bolts; whose word comes first is the last.</summary>
    public static IReadOnlyList<Caution> Cautions { get; } = [Caution.Lifting, Caution.Bolts, Caution.Defer];

    /// <summary>The sheet of a boat.</summary>
    /// <param name="rig">The rig as it leaves.</param>
    /// <param name="standard">What the boat is judged by.</param>
    /// <param name="settings">How well riggers come back.</param>
    /// <remarks>
    /// Riggers come off from the bow, a port one and a starboard one in turn, so that the hull on its trestles does not get heavy on one
    /// side (common practice). Of the readings after it each gate is read once, at the catch, where a blade that dives begins to: there
    /// a pin that came back leaning aft and one leaning out both show. Of spread or span, and of height, the ends of the boat are
    /// measured on both sides: a rigger on the wrong seat or a spacer left off shows there first.
    /// </remarks>
    public static TravelSheet Of(RigOfBoat rig, Standard standard, ChangeSettings settings)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(settings);
        return new(rig, InTurn(rig), Readings(rig, standard.Catch.Floor.Degrees, settings));
    }

    private static List<TravellingRigger> InTurn(RigOfBoat rig)
    {
        List<GatePlace> port = [.. rig.Gates.Where(g => g.Side == Side.Port)];
        List<GatePlace> starboard = [.. rig.Gates.Where(g => g.Side == Side.Starboard)];
        var off = new List<TravellingRigger>();
        for (int i = 0; i < Math.Max(port.Count, starboard.Count); i++)
        {
            foreach (List<GatePlace> side in (ReadOnlySpan<List<GatePlace>>)[port, starboard])
            {
                if (i < side.Count)
                {
                    off.Add(new(side[i], rig.Rigger(side[i])));
                }
            }
        }

        return off;
    }

    private static List<QuickReading> Readings(RigOfBoat rig, double floor, ChangeSettings settings)
    {
        var readings = new List<QuickReading>();

        // Aft and out alike: cos² + sin² of the oar's angle is 1, so that a pitch is uncertain by as much as either lean.
        foreach (GatePlace gate in rig.Gates)
        {
            readings.Add(Reading(rig, RigItem.PitchCatch, new(gate.Seat, gate.Side), settings.Mending.NewPinU.Degrees) with { Floor = floor });
        }

        // Sweep: the seats nearest the ends on each side; scull: the end seats, which have both.
        var ends = new SortedSet<GatePlace>();
        foreach (IGrouping<Side, GatePlace> side in rig.Gates.GroupBy(g => g.Side))
        {
            ends.Add(side.First());
            ends.Add(side.Last());
        }

        RigItem width = rig.Class.Rowing == Rowing.Sweep ? RigItem.Spread : RigItem.Span;
        foreach (int seat in ends.Select(g => g.Seat).Distinct())
        {
            readings.Add(Reading(rig, width, new(seat, null), settings.RefitCentimetres));
        }

        foreach (GatePlace gate in ends)
        {
            readings.Add(Reading(rig, RigItem.Height, new(gate.Seat, gate.Side), settings.RefitCentimetres));
        }

        return readings;
    }

    /// <summary>Before and after are two readings: what either is uncertain by counts.</summary>
    /// <remarks>The zero of a gauge read both times counts twice, for it may have moved on the road: the range is then rather too wide.</remarks>
    private static QuickReading Reading(RigOfBoat rig, RigItem item, RigPlace place, double refitted)
    {
        if (rig.Find(item, place)?.Value is not { } before)
        {
            return new(item, place, null);
        }

        double again = item.Measure() is { } measure ? RigErrors.Usual(measure).Once : QuickReading.ReadingU;
        return new(item, place, new(before.Value, Math.Sqrt((before.U * before.U) + (refitted * refitted) + (again * again))), Before: before);
    }
}
