using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>What a round has of one boat, told by the journal alone: so a round goes on where it stopped, whatever stopped it.</summary>
public sealed class BoatInRound
{
    /// <summary>What a round has of a boat.</summary>
    public BoatInRound(BoatView boat, string round)
    {
        ArgumentNullException.ThrowIfNull(boat);
        Boat = boat;
        Round = round;
        List<BoatLaid> lyings = [.. boat.Others.Select(r => r.Fact).OfType<BoatLaid>().Where(l => l.Round == round)];
        List<string> keys = [.. lyings.Select(l => l.Lying).Distinct()];
        Laid = lyings.LastOrDefault();
        Readings = keys.Count == 0 ? [] : [.. boat.Readings.Where(r => r.Fact is ReadingTaken taken && keys.Contains(taken.Lying))];
    }

    /// <summary>The boat.</summary>
    public BoatView Boat { get; }

    /// <summary>The round's key.</summary>
    public string Round { get; }

    /// <summary>How it was last laid in this round; null while it was not.</summary>
    public BoatLaid? Laid { get; }

    /// <summary>What was read of it in this round and holds, oldest first.</summary>
    public IReadOnlyList<Recorded> Readings { get; }

    /// <summary>The reading taken last; null for none.</summary>
    public Recorded? Last => Readings.Count == 0 ? null : Readings[^1];

    /// <summary>What was read at a step in this round, degrees as the gauge showed them, oldest first.</summary>
    public IReadOnlyList<decimal> Values(ReadingStep step) =>
        [.. Readings.Select(r => (ReadingTaken)r.Fact).Where(t => ReadingStep.Of(t) == step).Select(t => t.Value)];

    /// <summary>Whether a step was read in this round.</summary>
    public bool IsRead(ReadingStep step) => Readings.Any(r => ReadingStep.Of((ReadingTaken)r.Fact) == step);

    /// <summary>Whether anything was read of a gate's face or pin in this round.</summary>
    public bool IsRead(GatePlace gate) => Readings.Any(r =>
        r.Fact is ReadingTaken taken && taken.Item != ReadItem.Sleeve && new GatePlace(taken.Seat, taken.Side) == gate);

    /// <summary>What the gauge last showed at a step, in this round or before it, degrees; null for never.</summary>
    public decimal? LastValue(ReadingStep step)
    {
        // From the newest on: a boat has years of readings, and the one that is asked for is among the last.
        for (int place = Boat.Readings.Count - 1; place >= 0; place--)
        {
            if (Boat.Readings[place].Fact is ReadingTaken taken && ReadingStep.Of(taken) == step)
            {
                return taken.Value;
            }
        }

        return null;
    }
}
