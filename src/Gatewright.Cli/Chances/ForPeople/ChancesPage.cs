using Gatewright.Cli.Chances.Words;
using Gatewright.Cli.Drawing;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Learning;

namespace Gatewright.Cli.Chances.ForPeople;

/// <summary>A table of chances, drawn.</summary>
internal static class ChancesPage
{
    /// <summary>The columns the tables cannot do with less of.</summary>
    public const int LeastWidth = 70;

    private const int Now = 33;
    private const int From = 36;
    private const int Meaning = 4;

    public static Page Of(Told told, int width)
    {
        var page = new Page(width);
        foreach (string sentence in ToldWords.Heading(told))
        {
            page.Paragraph(sentence);
        }

        foreach (InputProblem warning in told.Warnings)
        {
            page.Paragraph($"Warning: {warning}");
        }

        Section(page, ToldWords.Chances, ChanceNumbers.Chances, told.Table);
        Section(page, ToldWords.Weights, ChanceNumbers.Weights, told.Table);
        Section(page, ToldWords.Reports, ChanceNumbers.Reports, told.Table);
        return page;
    }

    private static void Section(Page page, string head, IReadOnlyList<ChanceNumber> numbers, ClubChances table)
    {
        page.Blank();
        page.Add(new Line().Add(head, Ink.Strong).Add(" ").RuleTo(page.Width, '─'));
        foreach (ChanceNumber number in numbers)
        {
            string figure = NumberWords.Figure(number.Now(table));
            string key = number.Key[(number.Key.IndexOf('.', StringComparison.Ordinal) + 1)..];
            page.Paragraph(
                NumberWords.From(number, table),
                From,
                new Line().Add(" ").Add(key, Ink.Strong).To(Now - CellText.Width(figure)).Add(figure));
            page.Paragraph(number.Meaning, Meaning, ink: Ink.Quiet);
        }
    }
}
