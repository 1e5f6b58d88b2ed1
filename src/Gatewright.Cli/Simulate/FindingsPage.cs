using System.Globalization;
using Gatewright.Cli.Drawing;

namespace Gatewright.Cli.Simulate;

/// <summary>What a simulation found, as three tables.</summary>
internal static class FindingsPage
{
    /// <summary>The columns the tables cannot do with less of.</summary>
    public const int LeastWidth = 79;

    public static Page Of(SimulateRequest request, Findings findings, int width)
    {
        var page = new Page(width);
        page.Paragraph(FindingsWords.What(request), ink: Ink.Strong);
        page.Blank();
        WriteRanking(page, findings.Ranking);
        page.Blank();
        WriteReliability(page, findings.Reliability);
        page.Blank();
        WriteReading(page, findings.Reading);
        return page;
    }

    private static void WriteRanking(Page page, Ranking ranking)
    {
        int[] ends = [30, 52];
        Head(page, "How often the truth comes first");
        Row(page, ends, string.Empty, Ink.Quiet, "first", "first or second");
        Row(page, ends, "true seat", Ink.Plain, FindingsWords.Percent(ranking.Seat), FindingsWords.Percent(ranking.SeatOfTwo));
        Row(page, ends, "true cause", Ink.Plain, FindingsWords.Percent(ranking.Cause), FindingsWords.Percent(ranking.CauseOfTwo));
    }

    private static void WriteReliability(Page page, Reliability reliability)
    {
        int[] ends = [24, 34, 50, 72];
        Head(page, "Whether the probabilities hold");
        page.Paragraph(FindingsWords.Prior);
        Row(page, ends, "called", Ink.Quiet, "causes", "true", "on average", "share that was true");
        foreach (ReliabilityBand band in reliability.Bands)
        {
            Row(
                page,
                ends,
                FindingsWords.Band(band),
                Ink.Plain,
                band.True.Of.ToString(CultureInfo.InvariantCulture),
                band.True.Hits.ToString(CultureInfo.InvariantCulture),
                FindingsWords.Three(band.Stated),
                FindingsWords.True(band));
        }

        page.Paragraph(FindingsWords.Brier(reliability));
    }

    private static void WriteReading(Page page, IReadOnlyList<ReadingCount> counts)
    {
        int[] ends = [50, 64, 78];
        Head(page, "How many readings until it is decided");
        Row(page, ends, string.Empty, Ink.Quiet, "readings", "decided", "right");
        foreach (ReadingCount count in counts)
        {
            Row(
                page,
                ends,
                count.How,
                Ink.Plain,
                FindingsWords.Mean(count.Readings),
                FindingsWords.Percent(count.Decided),
                FindingsWords.Percent(count.Right));
        }

        page.Paragraph(FindingsWords.Decided, ink: Ink.Quiet);
    }

    private static void Head(Page page, string words) =>
        page.Add(new Line().Add(words, Ink.Strong).Add(" ").RuleTo(page.Width, '─'));

    /// <summary>A name on the left, and figures that end in their columns.</summary>
    private static void Row(Page page, int[] ends, string name, Ink ink, params string[] figures)
    {
        Line line = new Line().Add(" ").Add(name, ink);
        for (int i = 0; i < figures.Length; i++)
        {
            line.To(ends[i] - CellText.Width(figures[i])).Add(figures[i], ink);
        }

        page.Add(line);
    }
}
