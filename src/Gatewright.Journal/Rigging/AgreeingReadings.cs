using Gatewright.Core.Rig;

namespace Gatewright.Journal.Rigging;

/// <summary>
/// Of one day's readings of one thing the last, with those just before it that agree with it: what is set and read again within
/// minutes is no longer what it was.
/// </summary>
internal static class AgreeingReadings
{
    /// <summary>Those that count, newest first.</summary>
    /// <param name="oldestFirst">The readings of a day.</param>
    /// <param name="value">What a reading shows.</param>
    /// <param name="ownU">The standard uncertainty of a reading against another of the same day, in the same unit.</param>
    public static IEnumerable<T> Of<T>(IEnumerable<T> oldestFirst, Func<T, double> value, double ownU)
    {
        List<T> all = [.. oldestFirst];
        double allowed = RigFigures.ApartBy * Math.Sqrt(2) * ownU;
        return all.AsEnumerable().Reverse().TakeWhile(one => Math.Abs(value(one) - value(all[^1])) <= allowed);
    }
}
