namespace Gatewright.Core.Measuring;

/// <summary>Which of a gate's readings still speak of it.</summary>
/// <remarks>
/// Nobody notices every knock. What years of readings say together hides what the last round found, so only the days a
/// gate was last read on count; and the work of a diagnosis, which grows with the cube of the lyings, stays bounded.
/// </remarks>
public static class LatestReadings
{
    /// <summary>
    /// Of each gate, and apart from it of each oar, the readings of the last days it was read on. What has no date is
    /// taken as new and always kept.
    /// </summary>
    /// <param name="all">All readings, in any order.</param>
    /// <param name="days">How many days, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 day.</exception>
    public static BoatReadings Latest(this BoatReadings all, int days)
    {
        ArgumentNullException.ThrowIfNull(all);
        ArgumentOutOfRangeException.ThrowIfLessThan(days, 1);
        Dictionary<(GatePlace, bool), DateOnly> first = all.Readings
            .Where(r => r.Lie.Date is not null)
            .GroupBy(Thing)
            .ToDictionary(
                thing => thing.Key,
                thing => thing.Select(r => r.Lie.Date!.Value).Distinct().OrderDescending().Take(days).Last());
        return all with { Readings = [.. all.Readings.Where(r => r.Lie.Date is not { } day || day >= first[Thing(r)])] };
    }

    /// <summary>An oar's sleeve stays with the oar, whatever is done to the gate.</summary>
    private static (GatePlace Gate, bool IsOar) Thing(Reading reading) => (reading.Gate, reading.Item == ReadItem.Sleeve);
}
