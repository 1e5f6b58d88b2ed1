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
        Dictionary<(GatePlace, bool), List<DateOnly>> last = [];
        foreach (Reading reading in all.Readings)
        {
            if (reading.Lie.Date is { } day)
            {
                Among(last, Thing(reading), day, days);
            }
        }

        return all with { Readings = [.. all.Readings.Where(r => r.Lie.Date is not { } day || day >= last[Thing(r)][0])] };
    }

    /// <summary>
    /// Of these, what speaks of the boat as it is now: where a gate or its pin reads otherwise than on a day before, by more than readings
    /// of one may differ, what was read of it up to that day does not, whatever was done to it.
    /// </summary>
    /// <param name="all">All readings, in any order.</param>
    /// <param name="days">How many days, 1 or more.</param>
    /// <param name="settings">How uncertain readings are.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 day.</exception>
    public static ReadingsNow Now(this BoatReadings all, int days, MeasuringSettings settings)
    {
        BoatReadings latest = all.Latest(days);
        IReadOnlyList<SeenChange> changes = ChangesSeen.Of(latest.Readings, settings);
        if (changes.Count == 0)
        {
            return new(latest, changes);
        }

        var before = changes.DistinctBy(c => c.Gate).ToDictionary(c => c.Gate, c => c.Before);
        return new(latest with { Readings = [.. latest.Readings.Where(Counts)] }, changes);

        bool Counts(Reading reading) =>
            reading.Item == ReadItem.Sleeve || !before.TryGetValue(reading.Gate, out DateOnly day) || !(reading.Lie.Date <= day);
    }

    /// <summary>Puts a day among a thing's last days, earliest first, where it is one of them.</summary>
    private static void Among(Dictionary<(GatePlace, bool), List<DateOnly>> last, (GatePlace, bool) thing, DateOnly day, int days)
    {
        if (!last.TryGetValue(thing, out List<DateOnly>? known))
        {
            last.Add(thing, known = []);
        }

        int place = known.BinarySearch(day);
        if (place < 0)
        {
            known.Insert(~place, day);
            if (known.Count > days)
            {
                known.RemoveAt(0);
            }
        }
    }

    /// <summary>An oar's sleeve stays with the oar, whatever is done to the gate.</summary>
    private static (GatePlace Gate, bool IsOar) Thing(Reading reading) => (reading.Gate, reading.Item == ReadItem.Sleeve);
}
