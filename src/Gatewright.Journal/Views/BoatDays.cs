using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>
/// The day each of a boat's facts was true: the day it states (of a reading, its lying), else the day it was recorded.
/// Of one day the journal's own order decides.
/// </summary>
internal sealed class BoatDays : IComparer<Recorded>
{
    private readonly Dictionary<string, DateOnly?> _lyings = [];

    public BoatDays(IEnumerable<Recorded> records)
    {
        foreach (Recorded record in records)
        {
            if (record.As<BoatLaid>() is { } laid)
            {
                _lyings[laid.Lying] = laid.Date;
            }
        }
    }

    public DateOnly Of(Recorded record) => record.Fact is ReadingTaken taken
        ? _lyings.GetValueOrDefault(taken.Lying) ?? Day.Of(record.Entry)
        : Day.Of(record);

    public int Compare(Recorded? x, Recorded? y)
    {
        int byDay = x is null || y is null ? 0 : Of(x).CompareTo(Of(y));
        return byDay != 0 ? byDay : RecordedOrder.Instance.Compare(x, y);
    }
}
