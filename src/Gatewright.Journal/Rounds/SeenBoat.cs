using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>A boat on a round as a club's journal tells of it, and how it is judged where it was read last.</summary>
public sealed class SeenBoat
{
    private readonly JudgedAsRead _judged;

    private SeenBoat(Club club, BoatInRound boat, JudgedAsRead judged) => (Club, Boat, _judged) = (club, boat, judged);

    /// <summary>The club.</summary>
    public Club Club { get; }

    /// <summary>What the round has of the boat.</summary>
    public BoatInRound Boat { get; }

    /// <summary>The boat.</summary>
    public BoatView View => Boat.Boat;

    /// <summary>The verdict at the station; null while nothing was read there, or the boat's class is not known.</summary>
    public BoatVerdict? Verdict => _judged.Verdict;

    /// <summary>Looks at a boat.</summary>
    /// <param name="club">The club.</param>
    /// <param name="boat">What the round has of it there.</param>
    /// <param name="station">Where it is judged.</param>
    public static SeenBoat Of(Club club, BoatInRound boat, Station station)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return new(club, boat, JudgedAsRead.Of(club, boat.Boat, station));
    }

    /// <summary>
    /// The boat as another club tells of it, which came of this one. Where a reading was added and nothing else, as at each tap, what
    /// years have brought together is not gone through once more.
    /// </summary>
    /// <param name="club">The club.</param>
    /// <param name="station">Where it is judged.</param>
    public SeenBoat In(Club club, Station station)
    {
        BoatInRound boat = Boat.In(club, out IReadOnlyList<Recorded>? added);
        return new(club, boat, _judged.Then(club, boat.Boat, added, station));
    }
}
