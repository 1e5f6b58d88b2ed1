using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;

namespace Gatewright.App.Round;

/// <summary>A reading that nobody takes, on a club that nobody keeps.</summary>
/// <param name="Seen">The boat with it.</param>
/// <param name="Walk">Where the walk round it stands then.</param>
/// <param name="Taken">The reading.</param>
public sealed record RehearsedReading(SeenBoat Seen, BoatWalk Walk, TakenReading Taken)
{
    // What is right and what is wrong are told otherwise.
    private static readonly decimal[] Values = [4, 1];

    /// <summary>So many, from where a boat's walk stands, each with those before it; none where its faces are not read.</summary>
    public static IEnumerable<RehearsedReading> From(ReadingDesk desk, int count)
    {
        ArgumentNullException.ThrowIfNull(desk);
        return Readings(desk, count);
    }

    private static IEnumerable<RehearsedReading> Readings(ReadingDesk desk, int count)
    {
        (BoatWalk walk, SeenBoat seen) = (desk.Walk, desk.Seen);
        string lying = Guid.CreateVersion7().ToString("N");
        for (int taken = 0; taken < count && walk.Now is { Station: { } station } step; taken++)
        {
            decimal value = Values[taken % Values.Length];
            Club club = seen.Club;
            seen = seen.In(club.With(walk.Reading(value, desk.Laying, lying, desk.Gauge).Select(fact => Unrecorded(club, fact))), station);
            walk = walk.Recorded(seen.Boat);
            yield return new(seen, walk, new(step, value, null));
            walk = walk.IsOver ? walk.GoTo(step) : walk;
        }
    }

    private static Recorded Unrecorded(Club club, Fact fact)
    {
        (string kind, int version, byte[] body) = FactKinds.Write(fact);
        return new(
            new()
            {
                Id = Guid.CreateVersion7(),
                Club = club.Name,
                Member = string.Empty,
                Device = string.Empty,
                Time = club.Last,
                Kind = kind,
                Version = version,
                Body = body,
            },
            fact);
    }
}
