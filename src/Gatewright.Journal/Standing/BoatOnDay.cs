using Gatewright.Core.Checking;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Standing;

/// <summary>A boat as it stood at the end of a day, as far as is known today, and what came since.</summary>
/// <param name="Club">All that bore on the boat by then.</param>
/// <param name="Standing">How it stood; null where nothing is known of it by then.</param>
/// <param name="Since">What came between that day and another.</param>
public sealed record BoatOnDay(Club Club, BoatStanding? Standing, IReadOnlyList<ThingChange> Since)
{
    /// <summary>A boat on a day.</summary>
    /// <param name="club">The club today.</param>
    /// <param name="key">The boat.</param>
    /// <param name="day">The day.</param>
    /// <param name="until">The last day whose changes are told; none are where it is not after <paramref name="day"/>.</param>
    /// <param name="settings">What it is judged by, but for the standard, which is that of the day.</param>
    public static BoatOnDay Of(Club club, string key, DateOnly day, DateOnly until, CheckSettings settings)
    {
        Club boats = BoatJournal.Of(club, key);
        Club then = ClubOnDay.Of(boats, day);
        IReadOnlyList<ThingChange> since = until > day ? Changes.Between(boats, day, until) : [];
        if (!then.About(Subject.Boat(key)).Any())
        {
            return new(then, null, since);
        }

        Club told = WithClass(then, boats, key);
        return new(told, JudgedBoat.Of(told, key, settings, Shelves.OfAll(told))?.Standing, since);
    }

    /// <summary>A boat was of its class before anybody told so: readings of a day are often recorded first.</summary>
    private static Club WithClass(Club then, Club boats, string key) =>
        boats.About(Subject.Boat(key)).FirstOrDefault(r =>
            r.Fact is ThingSet { Thing: Things.Boat } set && set.Fields.GetValueOrDefault("class") is not null) is { } told
            ? then.With(told)
            : then;
}
