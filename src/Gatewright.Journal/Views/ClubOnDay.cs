using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>
/// A club as it was at the end of a day, as far as is known today: what was true by then, whenever it was recorded, less
/// what has been taken back since. What had been recorded by a time is another question: <see cref="Club.AsOf"/>.
/// </summary>
public static class ClubOnDay
{
    /// <summary>The club at the end of a day.</summary>
    public static Club Of(Club club, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(club);
        var days = new BoatDays(club.All());
        return Club.Empty(club.Name).With(club.All().Where(r => r.Fact is Retracted || days.Of(r) <= day));
    }
}
