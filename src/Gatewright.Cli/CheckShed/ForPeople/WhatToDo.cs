using System.Globalization;
using Gatewright.Cli.CheckShed.Words;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Speaking;
using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Mending;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>What follows from the two answers: the reading to take next, and how to mend what is probably wrong.</summary>
internal static class WhatToDo
{
    private const int Indent = 10;
    private const int Hang = 27;

    public static void Write(Page page, BoatCheck check, bool all)
    {
        page.Add(Heading.Of("What to do", "first read, then mend", page.Width));
        WriteNext(page, NextWords.Of(check));
        List<Remedy> told = [.. RemedyWords.OfBoat(check)];
        foreach (Remedy remedy in told)
        {
            Write(page, "the whole boat", [remedy]);
        }

        foreach (GatePlace gate in RemedyWords.Gates(check))
        {
            IReadOnlyList<Remedy> remedies = RemedyWords.OfGate(check, gate, all);
            if (remedies.Count > 0)
            {
                Write(page, gate.ToString(), remedies);
                told.AddRange(remedies);
            }
        }

        if (RemedyWords.Mind(told) is { Length: > 0 } mind)
        {
            page.Paragraph(mind, Indent, new Line().Add(" ").Add("mind", Ink.Strong));
        }
    }

    private static void WriteNext(Page page, Advice advice)
    {
        Line lead = new Line().Add(" ").Add("next", Ink.Strong);
        if (advice.Next is not { } next)
        {
            page.Paragraph(NextWords.Enough(advice), Indent, lead);
            return;
        }

        page.Paragraph(NextWords.What(next), Indent, lead);
        if (NextWords.Of(next) is { } scale)
        {
            page.Paragraph(scale, Indent);
        }

        foreach ((string band, string meaning) in NextWords.Outcomes(next))
        {
            page.Paragraph(meaning, Hang, new Line().To(Indent).Add(band));
        }
    }

    private static void Write(Page page, string place, IReadOnlyList<Remedy> remedies)
    {
        page.Add(new Line().Add(" ").Add(place, Ink.Strong));
        foreach (IGrouping<Core.Diagnosing.CausePart, Remedy> cause in remedies.GroupBy(remedy => remedy.Part))
        {
            page.Paragraph($"If it is {TwinWords.Bare(cause.Key)}:", Indent);
            foreach (Remedy remedy in cause)
            {
                Write(page, remedy);
            }
        }
    }

    private static void Write(Page page, Remedy remedy)
    {
        const int MinutesWidth = 4;
        string minutes = remedy.Minutes.ToString(CultureInfo.InvariantCulture).PadLeft(MinutesWidth) + " min";
        page.Paragraph(remedy.Instruction, Indent, new Line().Add(minutes, Ink.Quiet));
        string[] lines =
        [
            RemedyWords.Takes(remedy) is { } parts ? $"takes {parts}" : string.Empty,
            RemedyWords.Expect(remedy) is { } expect ? $"then expect {expect}" : string.Empty,
        ];
        string rest = string.Join("; ", lines.Where(line => line.Length > 0));
        if (rest.Length > 0)
        {
            page.Paragraph($"{Sentence.Capital(rest)}.", Indent, ink: Ink.Quiet);
        }
    }
}
