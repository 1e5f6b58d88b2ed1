using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What was told of a boat and not seen to: its gate neither mended nor read since, or no gate if it is of the whole boat.</summary>
public static class OpenReports
{
    /// <summary>The reports, newest first.</summary>
    public static IReadOnlyList<Incident> Of(BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        List<Recorded> told = [.. boat.Others.Where(r => r.Fact is Reported)];
        if (told.Count == 0)
        {
            return [];
        }

        var days = new BoatDays(boat.Records);
        var changes = new GateChanges(boat);
        return [.. told
            .Where(t => !changes.IsMended(t) && !boat.Readings.Any(r => IsOfItsGate(r, t) && days.Compare(r, t) > 0))
            .OrderByDescending(t => t, days)
            .Select(t => new Incident(t, days.Of(t), true))];
    }

    private static bool IsOfItsGate(Recorded reading, Recorded report) =>
        reading.Fact is ReadingTaken { Item: not ReadItem.Sleeve } taken
        && (report.Fact is not Reported { Seat: { } seat, Side: { } side } || (taken.Seat == seat && taken.Side == side));
}
