using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending.Options;

/// <summary>Whether two gates of a boat are near enough to one another, each after what is done about it or as it is.</summary>
/// <param name="check">The boat.</param>
public sealed class BoatRange(BoatCheck check)
{
    private readonly int _largest = (int)Math.Round(1000 * check.Settings.Standard.LargestRange.Degrees);

    /// <summary>
    /// Whether two gates may stand as they then do: no further apart than the standard allows, at every station where both
    /// are judged. Two gates that are both left are judged as they were read: only when they are surely too far apart
    /// does one of them have to be mended; else they are to be read again (<see cref="IsInDoubt"/>).
    /// </summary>
    public bool Allows(GateOption one, GateOption other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return Stations.All.All(s => !Exceeds(one, other, s) || (one.IsLeft && other.IsLeft && Judge(one, other, s) != Verdict.Adjust));
    }

    /// <summary>Whether two gates that are left read further apart than the standard allows, and not surely.</summary>
    public bool IsInDoubt(GateOption one, GateOption other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one.IsLeft && other.IsLeft && Stations.All.Any(s => Exceeds(one, other, s) && Judge(one, other, s) == Verdict.Unsure);
    }

    private bool Exceeds(GateOption one, GateOption other, Station station) =>
        one.Thousandths(station) is { } its
        && other.Thousandths(station) is { } others
        && Math.Abs(its - others) > _largest;

    private Verdict Judge(GateOption one, GateOption other, Station station)
    {
        CorrectedReadings readings = check.Corrected;
        Estimate apart = readings.Difference(readings.IndexOf(one.Gate, station), readings.IndexOf(other.Gate, station));
        return check.Settings.Rule.Limits(
            Math.Abs(apart.Value.Degrees),
            apart.U.Degrees,
            double.NegativeInfinity,
            check.Settings.Standard.LargestRange.Degrees).Verdict;
    }
}
