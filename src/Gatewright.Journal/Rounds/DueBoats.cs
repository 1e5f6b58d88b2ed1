using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>The rule by which a boat is due: its worst reason, or none.</summary>
public static class DueBoats
{
    /// <summary>After so many days a boat is read again though nothing speaks against it: 60 (this project's judgement).</summary>
    public const int LongestDays = 60;

    /// <summary>Why a boat is due on a day; null when it is not, is out of use, or its class is not known.</summary>
    public static DueReason? Reason(BoatStanding boat, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(boat);
        if (boat.IsOutOfUse || boat.View.Class is null)
        {
            return null;
        }

        if (boat.IsKeptByReadings)
        {
            return DueReason.Ashore;
        }

        if (boat.Check is not { } check)
        {
            return boat.View.Records.Any(r => r.Fact is ReadingTaken) ? DueReason.Changed : DueReason.Never;
        }

        return check.Verdict.Verdict == Verdict.Adjust ? DueReason.Adjust
            : OpenReports.Of(boat.View).Count > 0 ? DueReason.Told
            : boat.Changed is { Gates.Count: > 0 } ? DueReason.Changed
            : check.Verdict.Verdict == Verdict.Unsure ? DueReason.Doubt
            : boat.LastRead is { } day && today.DayNumber - day.DayNumber > LongestDays ? DueReason.LongAgo
            : null;
    }
}
