using System.Globalization;
using Gatewright.Cli.CheckShed.Words;
using Gatewright.Cli.Speaking;
using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Mending;

namespace Gatewright.Cli.CheckShed.InWords;

/// <summary>What to read next and how to mend, in words alone.</summary>
internal static class ToDoStatements
{
    public static void Write(Statements statements, BoatCheck check, bool all)
    {
        statements.Add("What to do, first read, then mend:");
        Next(statements, NextWords.Of(check));
        List<Remedy> told = [.. RemedyWords.OfBoat(check)];
        foreach (Remedy remedy in told)
        {
            Say(statements, "The whole boat", remedy);
        }

        foreach (GatePlace gate in RemedyWords.Gates(check))
        {
            foreach (Remedy remedy in RemedyWords.OfGate(check, gate, all))
            {
                Say(statements, Sentence.Capital(gate.ToString()), remedy);
                told.Add(remedy);
            }
        }

        if (RemedyWords.Mind(told) is { Length: > 0 } mind)
        {
            statements.Add($"Mind: {mind}");
        }
    }

    private static void Next(Statements statements, Advice advice)
    {
        if (advice.Next is not { } next)
        {
            statements.Add($"Next: {NextWords.Enough(advice)}");
            return;
        }

        statements.Add($"Next: {NextWords.What(next)}");
        foreach ((string band, string meaning) in NextWords.Outcomes(next))
        {
            statements.Add($"{NextWords.If(next)} {band}: {meaning}.");
        }
    }

    private static void Say(Statements statements, string place, Remedy remedy)
    {
        string takes = RemedyWords.Takes(remedy) is { } parts ? $" Takes {parts}." : string.Empty;
        string expect = RemedyWords.Expect(remedy) is { } band ? $" Then expect, in degrees, {band}." : string.Empty;
        statements.Add(string.Create(CultureInfo.InvariantCulture,
            $"{place}, if it is {TwinWords.Bare(remedy.Part)}, about {remedy.Minutes} minutes: {remedy.Instruction}{takes}{expect}"));
    }
}
