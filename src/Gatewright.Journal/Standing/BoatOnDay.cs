using Gatewright.Core.Checking;
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
        return new(
            then,
            JudgedBoat.Of(then, key, settings, Shelves.OfAll(then))?.Standing,
            until > day ? Changes.Between(boats, day, until) : []);
    }
}
