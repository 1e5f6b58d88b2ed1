using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Mend.Words;
using Gatewright.Core.Mending;

namespace Gatewright.Cli.Mend.ForPeople;

/// <summary>What to take along to the racks, and what to buy.</summary>
internal static class ListsSection
{
    private const int CountEnd = 5;
    private const int BoatsAt = 26;

    public static void Write(Page page, ShedMend shed)
    {
        Write(page, "Take along from the shelf", ListWords.TakeAlong(shed.Plan));
        Write(page, "To buy", ListWords.ToBuy(shed.Plan));
        if (shed.Stores is null && shed.NeedsAttention)
        {
            page.Paragraph(ListWords.NoStores);
            page.Blank();
        }
    }

    private static void Write(Page page, string heading, IEnumerable<(PartCount Part, string Boats)> parts)
    {
        page.Add(new Line().Add("━━ ", Ink.Quiet).Add(heading, Ink.Strong).Add(" ").RuleTo(page.Width, '━'));
        bool isEmpty = true;
        foreach ((PartCount part, string boats) in parts)
        {
            isEmpty = false;
            string count = part.Count.ToString(CultureInfo.InvariantCulture);
            page.Paragraph($"for {boats}", BoatsAt, new Line().To(CountEnd - count.Length).Add($"{count} × {part.Part}"));
        }

        if (isEmpty)
        {
            page.Paragraph("nothing", CountEnd);
        }

        page.Blank();
    }
}
