using Gatewright.Cli.Drawing;
using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;
using Gatewright.Words.HowRead;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>Where the uncertainty of the deciding readings comes from, part by part in columns.</summary>
internal static class BudgetTable
{
    private const int ValueEnd = 30;
    private const int PartWidth = 7;

    public static void Write(Page page, BoatCheck check)
    {
        IReadOnlyList<CorrectedPitch> pitches = Budgets.Of(check);
        if (pitches.Count == 0)
        {
            return;
        }

        page.Add(Heading.Of("Where ± comes from", "standard uncertainties in degrees", page.Width));
        page.Add(Heads(0));
        page.Add(Heads(1));
        foreach (CorrectedPitch pitch in pitches)
        {
            page.Add(Row(pitch));
        }

        string which = Budgets.IsNearest(check) ? "No reading decided against it; this one is nearest to a limit. " : string.Empty;
        page.Paragraph(which + English.Budgets.InAll, 1);
    }

    /// <summary>The parts' names are of two words each, which stand under each other: "gauge" over "step".</summary>
    private static Line Heads(int row)
    {
        Line line = new();
        for (int part = 0; part < English.Budgets.Parts.Count; part++)
        {
            EndAt(line, part, English.Budgets.Parts[part].Name.Split(' ')[row], Ink.Quiet);
        }

        return line;
    }

    private static Line Row(CorrectedPitch pitch)
    {
        string value = Figures.Degrees(pitch.Pitch.Degrees);
        Line line = new Line().Add($" {pitch.Gate} {pitch.At}").To(ValueEnd - value.Length).Add(value);
        for (int part = 0; part < English.Budgets.Parts.Count; part++)
        {
            EndAt(line, part, Figures.Degrees(English.Budgets.Parts[part].Degrees(pitch.Budget), 2), Ink.Plain);
        }

        return line;
    }

    private static void EndAt(Line line, int part, string text, Ink ink) =>
        line.To(ValueEnd + ((part + 1) * PartWidth) - text.Length).Add(text, ink);
}
