using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>What a round has of one boat, told by the journal alone: so a round goes on where it stopped, whatever stopped it.</summary>
public sealed class BoatInRound
{
    private readonly List<string> _lyings;

    // Whether some readings came before what says how the boat lay for them.
    private readonly Lazy<bool> _someWait;

    /// <summary>What a round has of a boat.</summary>
    public BoatInRound(BoatView boat, string round)
    {
        ArgumentNullException.ThrowIfNull(boat);
        Boat = boat;
        Round = round;
        List<BoatLaid> lyings = [.. boat.Others.Select(r => r.Fact).OfType<BoatLaid>().Where(l => l.Round == round)];
        _lyings = [.. lyings.Select(l => l.Lying).Distinct()];
        Laid = LaidLast.Of(lyings);
        Readings = _lyings.Count == 0 ? [] : [.. Of(boat.Readings)];
        _someWait = new(() =>
        {
            HashSet<string> known = [.. boat.Others.Select(r => r.As<BoatLaid>()?.Lying).OfType<string>()];
            return boat.Readings.Any(r => r.Fact is ReadingTaken taken && !known.Contains(taken.Lying));
        });
    }

    private BoatInRound(BoatInRound before, BoatView boat, IReadOnlyList<Recorded> added, BoatLaid? laid)
    {
        (Boat, Round, Laid) = (boat, before.Round, laid ?? before.Laid);
        _lyings = laid is null ? before._lyings : [.. before._lyings, laid.Lying];
        Readings = [.. before.Readings, .. Of(added)];
        _someWait = new(() => before._someWait.Value || added.Any(r =>
            r.Fact is ReadingTaken taken && !_lyings.Contains(taken.Lying) && !IsKnown(boat, taken.Lying)));
    }

    /// <summary>The same in a club that came of this one's, of which nothing is gone through once more where it only grew.</summary>
    /// <param name="club">The club.</param>
    /// <param name="added">All that came to the club, where it came to this boat alone; null where something else changed too.</param>
    internal BoatInRound In(Club club, out IReadOnlyList<Recorded>? added)
    {
        BoatView boat = Boat.In(club, out added);
        List<BoatLaid> laid = [.. (added ?? []).Select(r => r.As<BoatLaid>()).OfType<BoatLaid>()];
        return added is null || laid.Count > 1 || laid.Exists(l => !IsFirstWordOf(l)) ? new(boat, Round)
            : new(this, boat, added, laid.Find(l => l.Round == Round));
    }

    /// <summary>Whether nothing that was recorded speaks of a lying, so that what is said of it now changes nothing of what was read.</summary>
    private bool IsFirstWordOf(BoatLaid laid) => !_someWait.Value && !IsKnown(Boat, laid.Lying);

    private static bool IsKnown(BoatView boat, string lying) => boat.Others.Any(r => r.As<BoatLaid>()?.Lying == lying);

    /// <summary>The boat.</summary>
    public BoatView Boat { get; }

    /// <summary>The round's key.</summary>
    public string Round { get; }

    /// <summary>How it was last laid in this round; null while it was not. The same on every device that has the same entries.</summary>
    public BoatLaid? Laid { get; }

    /// <summary>What was read of it in this round and holds, oldest first.</summary>
    public IReadOnlyList<Recorded> Readings { get; }

    /// <summary>The reading taken last; null for none.</summary>
    public Recorded? Last => Readings.Count == 0 ? null : Readings[^1];

    /// <summary>What was read at a step in this round, degrees as the gauge showed them, oldest first.</summary>
    public IReadOnlyList<decimal> Values(ReadingStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return [.. Readings.Select(r => (ReadingTaken)r.Fact).Where(step.IsOf).Select(t => t.Value)];
    }

    /// <summary>Whether a step was read in this round.</summary>
    public bool IsRead(ReadingStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return Readings.Any(r => step.IsOf((ReadingTaken)r.Fact));
    }

    /// <summary>Whether anything was read of a gate's face or pin in this round.</summary>
    public bool IsRead(GatePlace gate) => Readings.Any(r =>
        r.Fact is ReadingTaken taken && taken.Item != ReadItem.Sleeve && new GatePlace(taken.Seat, taken.Side) == gate);

    /// <summary>What the gauge last showed at a step, in this round or before it, degrees; null for never.</summary>
    public decimal? LastValue(ReadingStep step) => At(step).Select(Value).FirstOrDefault();

    /// <summary>What the gauge showed there the time before the last, degrees; null for never.</summary>
    public decimal? ValueBeforeLast(ReadingStep step) => At(step).Skip(1).Select(Value).FirstOrDefault();

    /// <summary>
    /// The last reading of a step, where it was taken as the boat lies now and was asked about as a slip that nobody has kept; null otherwise.
    /// Whether it was is told by the journal alone, as it was when the value was tapped: by the reading before it.
    /// </summary>
    public Recorded? AskedAbout(ReadingStep step) =>
        At(step).FirstOrDefault() is { Fact: ReadingTaken taken } last
        && taken.Lying == Laid?.Lying
        && Slip.May(taken.Value, ValueBeforeLast(step))
        && !AskedSlips.IsKept(Boat, last)
            ? last
            : null;

    /// <summary>The retraction of a slip that was recorded together with the reading that put it right; null for none.</summary>
    public Recorded? PutRightBy(Recorded reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return AskedSlips.PutRightBy(Boat, reading);
    }

    /// <summary>How many readings of this round were taken as the boat lies now.</summary>
    public int ReadAsItLies => Laid is { } laid ? Readings.Count(r => ((ReadingTaken)r.Fact).Lying == laid.Lying) : 0;

    /// <summary>What is recorded when somebody says how the boat lies; null where the journal says so already.</summary>
    /// <param name="laying">How it lies.</param>
    /// <param name="isMoved">Whether it was moved since its last reading. If not it lay so for all that was read as it lies now: what was said of that before was wrong.</param>
    /// <param name="newLying">A key for a lying that is new.</param>
    public BoatLaid? Said(Laying laying, bool isMoved, string newLying)
    {
        ArgumentNullException.ThrowIfNull(laying);
        return laying.Said(Boat, Laid?.Lying, isMoved && ReadAsItLies > 0, newLying, Round);
    }

    private IEnumerable<Recorded> Of(IEnumerable<Recorded> readings) =>
        readings.Where(r => r.Fact is ReadingTaken taken && _lyings.Contains(taken.Lying));

    private IEnumerable<Recorded> At(ReadingStep step) => AskedSlips.At(Boat, step);

    private static decimal? Value(Recorded reading) => AskedSlips.Value(reading);
}
