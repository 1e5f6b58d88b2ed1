using Gatewright.Cli.Drawing;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Words.Told;
using Gatewright.Words;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>The whole shed at the end, where the eye is when the program is done: worst first.</summary>
internal static class ShedSection
{
    private const int Indent = 14;

    public static void Write(Page page, ShedCheck shed)
    {
        int gates = shed.Boats.Sum(boat => boat.Verdict.Gates.Count);
        page.Add(new Line()
            .Add("━━ ", Ink.Quiet)
            .Add("The shed", Ink.Strong)
            .Add($": {Figures.Count(shed.Boats.Count, "boat")}, {Figures.Count(gates, "gate")} read ")
            .RuleTo(page.Width, '━'));
        foreach (Verdict verdict in Verdicts.All.Reverse())
        {
            Boats(page, shed, verdict);
        }

        if (English.Shed.HeldWhateverTheyRead(shed.Told) is { } held)
        {
            page.Paragraph(held, Indent, new Line().Add(" ").Add("held", Ink.Strong), Ink.Strong);
        }

        NotRead(page, shed);
        foreach (string warning in English.Shed.Warnings(shed.Told))
        {
            page.Paragraph($"{warning}.", Indent, new Line().Add(" ").Add("warning", Ink.Strong));
        }

        page.Blank();
        foreach (string limits in English.Standards.Limits(shed.Boats, shed.Standard))
        {
            page.Paragraph(limits);
        }

        page.Paragraph(English.Standards.PlusMinus);
        Legend(page, shed);
        page.Blank();
        if (shed.NeedsAttention)
        {
            page.Paragraph(English.Cautions.Lifting);
        }

        page.Paragraph(English.Cautions.Precedence);
    }

    private static void Boats(Page page, ShedCheck shed, Verdict verdict)
    {
        const int CountEnd = Indent - 2;
        IReadOnlyList<BoatCheck> boats = ShedWords.Boats(shed.Told, verdict);
        string count = Figures.Degrees(boats.Count, 0);
        Line line = new Line().Add(" ").Add(verdict.Sign(), verdict.Ink()).To(CountEnd - count.Length).Add(count);
        bool isList = verdict != Verdict.Good && boats.Count > 0;
        page.Paragraph(
            isList ? $"{Sentence.Capital(English.Shed.WhatNow(verdict))}:"
            : boats.Count > 0 ? string.Join(", ", boats.Select(English.Boats.Name))
            : "none",
            Indent,
            line);
        foreach (BoatCheck boat in isList ? boats : [])
        {
            page.Paragraph(English.Boats.Trouble(boat), Indent);
        }

        if (verdict == Verdict.Stop && English.Shed.TreatAsStop(shed.Told) is { } more)
        {
            page.Paragraph(more, Indent, ink: Ink.Strong);
        }
    }

    private static void NotRead(Page page, ShedCheck shed)
    {
        foreach (BoatCheck boat in shed.Boats.Where(boat => boat.Verdict.NotRead.Count > 0))
        {
            page.Paragraph(
                $"{boat.Verdict.Boat}: {English.Names.Gates(boat.Verdict.NotRead)}. The verdict says nothing of them.",
                Indent,
                new Line().Add(" ").Add("not read", Ink.Strong));
        }
    }

    private static void Legend(Page page, ShedCheck shed)
    {
        if (shed.HasExpected)
        {
            page.Paragraph(English.Standards.Brackets);
        }

        if (shed.NeedsAttention)
        {
            page.Paragraph(
                $"Drawn from plumb: {PlumbScale.PlumbLine} plumb, {PlumbScale.FloorMark} floor, "
                + $"{PlumbScale.LowestMark} {PlumbScale.HighestMark} limits, "
                + $"{PlumbScale.ReadReach}{PlumbScale.ReadMark}{PlumbScale.ReadReach} read ± u, "
                + $"{PlumbScale.ExpectedReach}{PlumbScale.ExpectedMark}{PlumbScale.ExpectedReach} not read, expected ± u. "
                + "The mark at a figure is the verdict it gave by itself: "
                + string.Join(", ", Verdicts.All.Skip(1).Select(verdict => $"{verdict.Mark()} {verdict.Word()}")) + ".");
        }
    }
}
