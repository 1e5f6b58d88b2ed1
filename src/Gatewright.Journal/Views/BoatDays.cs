using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>
/// The day each of a boat's facts was true: the day it states (of a reading, its lying), else the day it was recorded.
/// Of one day the journal's own order decides.
/// </summary>
internal sealed class BoatDays : IComparer<Recorded>
{
    private readonly Dictionary<string, DateOnly> _stated = [];

    public BoatDays(IEnumerable<Recorded> records)
    {
        foreach (Recorded record in records)
        {
            if (record.As<BoatLaid>() is { } laid)
            {
                // The last word counts, and may be that there is no day but that of the entry.
                if (laid.Date is { } day)
                {
                    _stated[laid.Lying] = day;
                }
                else
                {
                    _stated.Remove(laid.Lying);
                }
            }
        }
    }

    public DateOnly Of(Recorded record) => Stated(record) ?? Day.Of(record.Entry);

    public int Compare(Recorded? x, Recorded? y)
    {
        int byDay = x is null || y is null ? 0 : ByDay(x, y);
        return byDay != 0 ? byDay : RecordedOrder.Instance.Compare(x, y);
    }

    /// <summary>Where neither states a day, the order of their times is that of their days, and no day is worked out: of years of readings few state any.</summary>
    private int ByDay(Recorded x, Recorded y)
    {
        (DateOnly? one, DateOnly? other) = (Stated(x), Stated(y));
        return one is null && other is null ? 0 : (one ?? Day.Of(x.Entry)).CompareTo(other ?? Day.Of(y.Entry));
    }

    private DateOnly? Stated(Recorded record) => record.Fact is ReadingTaken taken
        ? _stated.TryGetValue(taken.Lying, out DateOnly day) ? day : null
        : Day.Stated(record.Fact);
}
