using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>Which readings of a boat were asked about as slips, and which put one right, told by the journal alone: on a round, and where a job is proven.</summary>
internal static class AskedSlips
{
    private const long Together = 1000;

    /// <summary>The readings of a step, newest first: a boat has years of them, and those that are asked for are among the last.</summary>
    public static IEnumerable<Recorded> At(BoatView boat, ReadingStep step)
    {
        for (int place = boat.Readings.Count - 1; place >= 0; place--)
        {
            if (boat.Readings[place].Fact is ReadingTaken taken && step.IsOf(taken))
            {
                yield return boat.Readings[place];
            }
        }
    }

    /// <summary>Whether somebody has said of a reading that it is no slip.</summary>
    public static bool IsKept(BoatView boat, Recorded reading) => boat.Others.Any(r => r.Fact is ReadingKept kept && kept.Reading == reading.Entry.Id);

    /// <summary>The retraction of a slip that was recorded together with the reading that put it right; null for none.</summary>
    /// <remarks>Both are written at once by one device: nobody takes a reading back by hand within a second of the next.</remarks>
    public static Recorded? PutRightBy(BoatView boat, Recorded reading) => reading.Fact is not ReadingTaken right ? null : boat.TakenBack
        .LastOrDefault(b => IsWith(reading.Entry, b.Retraction.Entry)
            && b.Back.Entry.Time < reading.Entry.Time
            && b.Back.Fact is ReadingTaken slip
            && (slip.Lying, ReadingStep.Of(slip)) == (right.Lying, ReadingStep.Of(right)))
        .Retraction;

    /// <summary>What a reading showed, degrees.</summary>
    public static decimal? Value(Recorded reading) => ((ReadingTaken)reading.Fact).Value;

    private static bool IsWith(Entry reading, Entry retraction) => retraction.Device == reading.Device
        && retraction.Time > reading.Time
        && retraction.Time.Milliseconds - reading.Time.Milliseconds < Together;
}
