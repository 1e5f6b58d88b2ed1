using Gatewright.Cli.Drawing;
using Gatewright.Cli.Speaking;
using Gatewright.Core.Load;
using Gatewright.Words;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Balances;

/// <summary>The balance of boats in words: the caution first, the assumptions last.</summary>
internal static class BalanceStatements
{
    public static Statements Of(IReadOnlyList<BalancedBoat> boats, DriveProfile pull)
    {
        var to = new Statements();
        to.Add(English.Load.Caution);
        to.Add($"Pull: {English.Load.Profile(pull)}.");
        to.Pause();
        foreach (BalancedBoat boat in boats)
        {
            to.Add($"{boat.Boat}, {boat.Class}:");
            if (boat.Balance is { } balance)
            {
                Add(to, balance);
            }
            else
            {
                to.Add(English.Load.NotWhole);
            }

            to.Pause();
        }

        to.Add("The model rests on this:");
        foreach (string assumption in English.Load.Assumptions.Append(English.Load.Measured))
        {
            to.Add(assumption);
        }

        return to;
    }

    private static void Add(Statements to, BoatBalance balance)
    {
        to.Add($"Roll moment, mean over the drive: {English.Load.Roll(balance.MeanRoll)}.");
        foreach (RollPoint point in balance.Roll.Where((_, i) => i % 3 == 0))
        {
            to.Add($"Oars at {Figures.Degrees(point.At.Degrees, 0)}°: {English.Load.Roll(point.Roll)}.");
        }

        foreach (GateBalance gate in balance.Gates)
        {
            to.Add($"{Sentence.Capital(English.Names.Gate(gate.Gate))}: handle {English.Load.Force(gate.FromMean)} against the boat's mean; roll beyond its target {English.Load.Roll(gate.RollOff)}.");
        }

        to.Add(English.Load.Known(balance));
        foreach (GateBalance gate in balance.Gates.Where(g => g.Oar.IsSleeveRead || g.Oar.IsArcOwn))
        {
            to.Add(English.Load.Oar(gate));
        }

        to.Add(English.Load.ForRoll(balance.ForRoll));
        to.Add(English.Load.ForLoad(balance.ForLoad));
        foreach (string turn in English.Load.Turns(balance))
        {
            to.Add(turn);
        }
    }
}
