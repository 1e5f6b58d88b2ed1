using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Mending;
using Gatewright.Core;
using Gatewright.Words.ToMend;
using Gatewright.Words.ToRead;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>What follows from the two answers: the reading to take next, and how to mend what is probably wrong.</summary>
internal static class WhatToDo
{
    private const int Indent = 10;
    private const int Hang = 27;

    public static void Write(Page page, BoatCheck check, bool all)
    {
        page.Add(Heading.Of("What to do", "first read, then mend", page.Width));
        WriteNext(page, NextWords.For(check));
        List<Remedy> told = [.. RemedyChoice.OfBoat(check)];
        foreach (Remedy remedy in told)
        {
            Write(page, English.Names.WholeBoat, [remedy]);
        }

        foreach (GatePlace gate in RemedyChoice.Gates(check))
        {
            IReadOnlyList<Remedy> remedies = RemedyChoice.OfGate(check, gate, all);
            if (remedies.Count > 0)
            {
                Write(page, English.Names.Gate(gate), remedies);
                told.AddRange(remedies);
            }
        }

        if (English.Cautions.Mind(told.SelectMany(remedy => remedy.Cautions)) is { Length: > 0 } mind)
        {
            page.Paragraph(mind, Indent, new Line().Add(" ").Add("mind", Ink.Strong));
        }
    }

    private static void WriteNext(Page page, Advice advice)
    {
        Line lead = new Line().Add(" ").Add("next", Ink.Strong);
        if (advice.Next is not { } next)
        {
            page.Paragraph(English.Next.Enough(advice), Indent, lead);
            return;
        }

        page.Paragraph(English.Next.What(next), Indent, lead);
        if (English.Next.Scale(next) is { } scale)
        {
            page.Paragraph(scale, Indent);
        }

        foreach ((string band, string meaning) in English.Next.Outcomes(next))
        {
            page.Paragraph(meaning, Hang, new Line().To(Indent).Add(band));
        }
    }

    private static void Write(Page page, string place, IReadOnlyList<Remedy> remedies)
    {
        page.Add(new Line().Add(" ").Add(place, Ink.Strong));
        foreach (IGrouping<Core.Diagnosing.CausePart, Remedy> cause in remedies.GroupBy(remedy => remedy.Part))
        {
            page.Paragraph(English.Remedies.IfItIs(cause.Key), Indent);
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
        page.Paragraph(English.Remedies.Instruction(remedy), Indent, new Line().Add(minutes, Ink.Quiet));
        if (English.Remedies.TakesAndExpect(remedy) is { } rest)
        {
            page.Paragraph(rest, Indent, ink: Ink.Quiet);
        }
    }
}
