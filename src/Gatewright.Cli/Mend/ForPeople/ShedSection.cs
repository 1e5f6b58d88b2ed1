using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Mend.Words;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Mend.ForPeople;

/// <summary>The whole shed at the end, where the eye is when the program is done.</summary>
internal static class ShedSection
{
    private const int CountEnd = 5;
    private const int NamesAt = 8;

    public static void Write(Page page, ShedMend shed)
    {
        page.Add(new Line()
            .Add("━━ ", Ink.Quiet)
            .Add("The shed", Ink.Strong)
            .Add($": {Figures.Count(shed.Check.Boats.Count, "boat")}, about {Figures.Count(shed.Plan.Minutes, "minute")} of work today ")
            .RuleTo(page.Width, '━'));
        foreach ((string words, IReadOnlyList<string> boats) in PlanWords.Outcomes(shed.Plan))
        {
            if (boats.Count > 0)
            {
                string count = boats.Count.ToString(CultureInfo.InvariantCulture);
                page.Paragraph(
                    $"{words}: {string.Join(", ", boats)}", NamesAt, new Line().To(CountEnd - count.Length).Add(count, Ink.Strong));
            }
        }

        if (English.Shed.TreatAsStop(shed.Check.Told) is { } more)
        {
            page.Paragraph(more, NamesAt, ink: Ink.Strong);
        }

        foreach (string warning in English.Shed.Warnings(shed.Check.Told))
        {
            page.Paragraph($"{warning}.", NamesAt + 2, new Line().Add(" ").Add("warning", Ink.Strong));
        }

        page.Blank();
        page.Paragraph(PlanWords.Proof(shed.Plan));
        page.Paragraph(PlanWords.ThenRead);
        foreach (string limits in English.Standards.Limits(shed.Check.Boats, shed.Check.Standard))
        {
            page.Paragraph(limits);
        }

        page.Paragraph(PlanWords.Rests);
        page.Blank();
        if (shed.NeedsAttention)
        {
            page.Paragraph(English.Cautions.Lifting);
        }

        page.Paragraph(English.Cautions.Precedence);
    }
}
