using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>
/// Of a club's journal all that bears on one boat: its own entries, those of its seats, gates and jobs, of the racks it lay on and the
/// gauges it was read with, the standards, targets and settings, riggers and oars, and what takes entries back. Small even where the club's is long,
/// so that a day in the past can be gone back to on a phone.
/// </summary>
public static class BoatJournal
{
    /// <summary>The club as if it had this boat alone.</summary>
    public static Club Of(Club club, string boat)
    {
        ArgumentNullException.ThrowIfNull(club);
        var shelf = Subject.Boat(boat);
        List<Fact> facts = [.. club.Everything(shelf).Select(r => r.Fact)];
        IEnumerable<Subject> named = facts.SelectMany(Named);
        IEnumerable<Subject> shared = club.Subjects.Where(s => s.Thing is Things.Standard or Things.Settings or Things.Target or Things.Rigger or Things.Oar);
        return Club.Empty(club.Name).With(
            new[] { shelf, Subject.Journal }.Concat(named).Concat(BoatRemarks.Places(club, boat)).Concat(shared).Distinct().SelectMany(club.Everything));
    }

    private static IEnumerable<Subject> Named(Fact fact) => fact switch
    {
        JobPlanned job => [new("job", job.Job)],
        ChangePlanned change => [new("job", change.Job)],
        BoatLaid { Rack: { } rack } => [new(Things.Rack, rack)],
        ReadingTaken { Gauge: { } gauge } => [new(Things.Gauge, gauge)],
        ThingSet { Thing: Things.Boat } set when set.Fields.GetValueOrDefault("rack") is { } rack => [new(Things.Rack, rack)],
        _ => [],
    };
}
