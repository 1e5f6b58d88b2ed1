using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Standing;

/// <summary>
/// All of a club's journal that a boat's record is read from. A shelf never changes: a club on which more was filed has
/// another one in its place, so that the same shelves mean the same record.
/// </summary>
internal sealed class Shelves
{
    private readonly Dictionary<Subject, IReadOnlyCollection<Recorded>> _shelves;

    private Shelves(Club club, IEnumerable<Subject> subjects) =>
        _shelves = subjects.Distinct().ToDictionary(s => s, club.Everything);

    /// <summary>Those that every boat's record is read from: racks, gauges, and what takes back other entries.</summary>
    public static Shelves OfAll(Club club) =>
        new(club, [Subject.Journal, .. club.Subjects.Where(s => s.Thing is Things.Rack or Things.Gauge)]);

    /// <summary>Those of one boat, of its jobs, and of its gates, where damage is noted. What is set for its seats and gates is filed with the boat.</summary>
    public static Shelves OfBoat(Club club, string boat)
    {
        var shelf = Subject.Boat(boat);
        int seats = new BoatView(club, boat).Class?.Seats ?? 0;
        return new(club, [
            shelf,
            .. club.Everything(shelf).Select(r => r.As<JobPlanned>()).OfType<JobPlanned>().Select(j => new Subject("job", j.Job)),
            .. Enumerable.Range(1, seats).SelectMany(seat => Enum.GetValues<Side>().Select(side => new Subject(Things.Gate, Things.GateKey(boat, new(seat, side))))),
        ]);
    }

    /// <summary>Whether a club has the very same.</summary>
    public bool AreThoseOf(Club club) => _shelves.All(s => ReferenceEquals(s.Value, club.Everything(s.Key)));

    /// <summary>Whether others are the very same, no more and no less.</summary>
    public bool AreSame(Shelves other) =>
        _shelves.Count == other._shelves.Count
        && _shelves.All(s => other._shelves.TryGetValue(s.Key, out IReadOnlyCollection<Recorded>? shelf) && ReferenceEquals(s.Value, shelf));
}
