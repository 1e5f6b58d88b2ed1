using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Oars;
using Gatewright.Journal.Oars;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Oars;

/// <summary>A set as a table: a line an oar, a column an item; what is not good has its verdict's mark behind it.</summary>
/// <remarks>
/// <code>
/// ━━ Alluvium  8 oars, cleaver ━━━━━━━━━━━━━━━━━ ◆ adjust
///                 sleeve   length  inboard   weight
///  Alluvium 1        0.2    376.0    114.0     2.46
///  Alluvium 5        2.7◆   376.0    114.0     2.46
///  middle            0.2    376.0    114.0     2.46
///  ±                 0.5      0.2      0.1     0.02
/// </code>
/// </remarks>
internal static class SetTable
{
    public const int LeastWidth = 60;
    private const int NameWidth = 18;
    private const int ColumnWidth = 9;

    public static void Write(Page page, OarSetView set)
    {
        string sign = set.Verdict?.Sign() ?? "not compared";
        string about = $"  {Figures.Count(set.Oars.Count, "oar")}{(set.Blade is { } blade ? $", {blade}" : string.Empty)} ";
        page.Add(new Line().Add("━━ ", Ink.Quiet)
            .Add(CellText.Fit(set.Title, page.Width - sign.Length - about.Length - 8), Ink.Strong).Add(about)
            .RuleTo(page.Width - sign.Length - 1, '━').Add(" ").Add(sign, set.Verdict?.Ink() ?? Ink.Quiet));
        if (set.Oars.Count == 0)
        {
            page.Paragraph("No oar is of this set.", 1);
            page.Blank();
            return;
        }

        Line heads = new();
        Each(item => heads.To(End(item) - English.Oars.Item(item).Length).Add(English.Oars.Item(item), Ink.Quiet));
        page.Add(heads);
        foreach (OarView oar in set.Oars)
        {
            page.Add(Row(set, oar));
        }

        Line middle = new Line().Add(" middle", Ink.Quiet);
        Line u = new Line().Add(" ±", Ink.Quiet);
        Each(item =>
        {
            if (set.Of(item) is { Oars.Count: > 0 } judged)
            {
                Cell(middle, item, judged.Median, Ink.Quiet);
                if (judged.Worth != SetWorth.Alone)
                {
                    Cell(u, item, judged.Oars.Max(o => o.OffU), Ink.Quiet);
                }
            }
        });
        page.Add(middle);
        page.Add(u);
        page.Paragraph("Degrees, centimetres, kilograms. ± is the standard uncertainty against the others: what the set shares has dropped out.", 1, ink: Ink.Quiet);
        foreach (string sentence in SetWords.Of(set))
        {
            page.Paragraph(sentence, 1);
        }

        page.Blank();
    }

    private static Line Row(OarSetView set, OarView oar)
    {
        Line line = new Line().Add(" ").Add(CellText.Fit(oar.Title, NameWidth - 2));
        Each(item =>
        {
            if (oar.Oar[item] is { } figure)
            {
                Verdict verdict = set.Of(item)?.Find(oar.Key)?.Verdict ?? Verdict.Good;
                Cell(line, item, figure.Value, verdict == Verdict.Good ? Ink.Plain : verdict.Ink());
                if (verdict != Verdict.Good)
                {
                    line.Add(verdict.Mark().ToString(), verdict.Ink());
                }
            }
        });
        return line;
    }

    private static void Cell(Line line, OarItem item, double value, Ink ink)
    {
        string text = Figures.Degrees(value, item == OarItem.Weight ? 2 : 1);
        line.To(End(item) - text.Length).Add(text, ink);
    }

    private static int End(OarItem item) => NameWidth + (ColumnWidth * ((int)item + 1));

    private static void Each(Action<OarItem> act)
    {
        foreach (OarItem item in OarItems.All)
        {
            act(item);
        }
    }
}
