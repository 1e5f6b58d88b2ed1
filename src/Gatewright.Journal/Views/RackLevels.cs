using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What was read of a rack's level.</summary>
public static class RackLevels
{
    /// <summary>A rack as it was last read by a day, or failing that, first read after it; null while nobody has read it.</summary>
    public static Rack? Of(Club club, string key, DateOnly day) => Of(club, key, day, new(() => new(club, Things.Rack)));

    /// <summary>The same, with what racks are called worked out only once for many.</summary>
    internal static Rack? Of(Club club, string key, DateOnly day, Lazy<ThingTitles> titles)
    {
        ArgumentNullException.ThrowIfNull(club);
        List<Recorded> levels = [.. club.About(new(Things.Rack, key)).Where(r => r.Fact is RackLevelRead).OrderBy(Day.Of)];
        if ((levels.FindLast(r => Day.Of(r) <= day) ?? levels.FirstOrDefault()) is not { Fact: RackLevelRead level } read)
        {
            return null;
        }

        Bedding bed = new ThingView(club, Things.Rack, key)["bed"] == "soft" ? Bedding.Soft : Bedding.Firm;
        return new(
            titles.Value[key], HullAttitude.FromDegrees((double)level.BowHigh, (double)level.PortLow), bed, Day.Of(read));
    }
}
