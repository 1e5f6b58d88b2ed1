using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Reporting;

namespace Gatewright.Journal.Views;

/// <summary>
/// What was told of a boat and not seen to: of a report, that its gate is neither mended nor read since, or no gate if it is of the
/// whole boat; of damage, that since then neither a release that names it says what was done nor a job or a mending at its place has ended.
/// </summary>
public static class OpenReports
{
    /// <summary>The reports and the notes of damage, newest first.</summary>
    public static IReadOnlyList<Incident> Of(BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        List<Recorded> told = [.. boat.Others.Where(r => r.Fact is Reported)];
        List<Recorded> damage = [.. boat.Notes.Where(n => Damage.Is((Noted)n.Fact))];
        if (told.Count == 0 && damage.Count == 0)
        {
            return [];
        }

        var days = new BoatDays(boat.Records);
        var changes = new GateChanges(boat);
        return [.. told
            .Where(t => !changes.IsMended(t) && !boat.Readings.Any(r => IsOfItsGate(r, t) && days.Compare(r, t) > 0))
            .Concat(damage.Where(d => !IsSeenTo(boat, d, days)))
            .OrderByDescending(t => t, days)
            .Select(t => new Incident(t, days.Of(t), true))];
    }

    /// <summary>Whether damage to a boat was told and not seen to.</summary>
    public static bool HasDamage(BoatView boat) => Of(boat).Any(told => told.Record.Fact is Noted);

    private static bool IsSeenTo(BoatView boat, Recorded damage, BoatDays days) =>
        boat.Others.Any(r => r.Fact is Released { Lifts: { } lifts } && lifts.Contains(damage.Entry.Id))
        || SeesTo(boat, Damage.GateOf((Noted)damage.Fact)).Any(r => days.Compare(r, damage) > 0);

    /// <summary>What sees to all damage that was told before it: of a gate's damage, work at another gate does not.</summary>
    private static IEnumerable<Recorded> SeesTo(BoatView boat, GatePlace? gate) => boat.Others
        .Where(r => r.Fact is Released { Lifts: null } || (r.Fact is GateMended mended && gate is not null && gate == new GatePlace(mended.Seat, mended.Side)))
        .Concat(boat.Jobs.Where(job => job.Done is not null && job.Gate == gate).Select(job => job.Done!));

    private static bool IsOfItsGate(Recorded reading, Recorded report) =>
        reading.Fact is ReadingTaken { Item: not ReadItem.Sleeve } taken
        && (report.Fact is not Reported { Seat: { } seat, Side: { } side } || (taken.Seat == seat && taken.Side == side));
}
