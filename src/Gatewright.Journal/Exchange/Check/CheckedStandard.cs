using Gatewright.Core.Judging;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>The limits of a standard, in degrees.</summary>
/// <param name="Name">What the club calls it.</param>
/// <param name="Catch">At the catch.</param>
/// <param name="Abeam">Abeam.</param>
/// <param name="Finish">At the finish.</param>
/// <param name="LargestDrop">The most a gate may lose from catch to finish.</param>
/// <param name="LargestRange">The most two gates of one boat may differ at one station.</param>
public sealed record CheckedStandard(
    string Name, CheckedLimits Catch, CheckedLimits Abeam, CheckedLimits Finish, double LargestDrop, double LargestRange)
{
    /// <summary>A standard as written.</summary>
    public static CheckedStandard Of(Standard standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return new(
            standard.Name,
            CheckedLimits.Of(standard.Catch),
            CheckedLimits.Of(standard.Abeam),
            CheckedLimits.Of(standard.Finish),
            Rounded.Degrees(standard.LargestDrop),
            Rounded.Degrees(standard.LargestRange));
    }
}

/// <summary>The limits at one station, in degrees.</summary>
/// <param name="Lowest">The lowest pitch of good quality; on it is inside.</param>
/// <param name="Highest">The highest pitch of good quality; on it is inside.</param>
/// <param name="Floor">The pitch below which the blade may dive.</param>
public sealed record CheckedLimits(double Lowest, double Highest, double Floor)
{
    /// <summary>Limits as written.</summary>
    public static CheckedLimits Of(StationLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return new(
            Rounded.Degrees(limits.Lowest.Angle), Rounded.Degrees(limits.Highest.Angle), Rounded.Degrees(limits.Floor.Angle));
    }
}
