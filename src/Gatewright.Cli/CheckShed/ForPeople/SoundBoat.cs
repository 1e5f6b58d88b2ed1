using Gatewright.Cli.Drawing;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core;
using Gatewright.Words.Judged;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>A boat with nothing wrong, in three lines: its name, the spread of its pitches, and a small plan with the bow to the left.</summary>
/// <remarks>
/// <code>
/// ● good  Heron  8+                           ●     ●     ●     ●      starboard
///         catch     abeam     finish        ◁━1━━2━━3━━4━━5━━6━━7━━8━▷
///  ±0.3   3.5–4.5   3.0–4.5   3.5–4.5            ●     ●     ●     ●   port
/// </code>
/// </remarks>
internal static class SoundBoat
{
    private const int ColumnsASeat = 3;
    private const int SideWords = 11;
    private const int Indent = 8;
    private const int PlanRows = 3;
    private const int ColumnWidth = 10;

    public static IEnumerable<Line> Draw(BoatCheck check, int width)
    {
        int planAt = width - SideWords - (8 * ColumnsASeat) - 3;
        string[] plan = Plan(check.Verdict);
        List<Line> text = Text(check, planAt - 2);
        for (int row = 0; row < Math.Max(PlanRows, text.Count); row++)
        {
            Line line = row < text.Count ? text[row] : new();
            if (row < PlanRows)
            {
                line.To(planAt);
                foreach (char mark in plan[row])
                {
                    line.Add(mark.ToString(), mark == Verdict.Good.Mark() ? Ink.Good : Ink.Quiet);
                }
            }

            yield return line;
        }
    }

    private static List<Line> Text(BoatCheck check, int width)
    {
        BoatVerdict boat = check.Verdict;
        bool isRead = boat.Gates.Count > 0;
        var page = new Page(width);
        int nameWidth = width - Indent - 2 - boat.Class.Name.Length;
        page.Add(new Line()
            .Add(isRead ? boat.Verdict.Sign() : string.Empty, boat.Verdict.Ink())
            .To(Indent)
            .Add(CellText.Fit(boat.Boat, nameWidth), Ink.Strong)
            .Add("  " + boat.Class.Name));
        if (isRead)
        {
            AddSpread(page, boat);
        }
        else
        {
            page.Paragraph(English.Boats.NoGate, Indent);
        }

        if (isRead && boat.NotRead.Count > 0)
        {
            page.Paragraph($"not read at all: {English.Names.Gates(boat.NotRead)}", Indent);
        }

        return [.. page.Lines];
    }

    private static void AddSpread(Page page, BoatVerdict boat)
    {
        Line heads = new();
        Line figures = new Line().Add($" ±{Figures.Degrees(PitchSpread.WidestU(boat))}");
        foreach (Station station in Stations.All)
        {
            int column = Indent + ((int)station * ColumnWidth);
            var spread = PitchSpread.At(boat, station);
            heads.To(column).Add(spread.Read ? station.Word() : $"({station.Word()})", Ink.Quiet);
            figures.To(column).Add(spread.Read ? Range(spread) : $"({Range(spread)})", spread.Read ? Ink.Plain : Ink.Quiet);
        }

        page.Add(heads);
        page.Add(figures);
        foreach (string missing in English.Spreads.PartlyRead(boat))
        {
            page.Paragraph(missing, Indent);
        }
    }

    /// <summary>"3.5–4.5", or "4.0" when they are alike.</summary>
    private static string Range(PitchSpread spread)
    {
        (string least, string most) = (Figures.Degrees(spread.Least), Figures.Degrees(spread.Most));
        return least == most ? least : $"{least}–{most}";
    }

    /// <summary>Facing a bow on the left, starboard is above and port below.</summary>
    private static string[] Plan(BoatVerdict boat)
    {
        string hull = string.Concat(Enumerable.Range(1, boat.Class.Seats).Select(seat => $"━{Figures.Degrees(seat, 0)}━"));
        return [Pins(boat, Side.Starboard), $"◁{hull}▷", Pins(boat, Side.Port)];
    }

    private static string Pins(BoatVerdict boat, Side side)
    {
        IEnumerable<string> pins = Enumerable.Range(1, boat.Class.Seats)
            .Select(seat => boat.Gates.Any(g => g.Gate == new GatePlace(seat, side)) ? $" {Verdict.Good.Mark()} "
                : boat.NotRead.Any(g => g.Seat == seat && (g.Side ?? side) == side) ? " ? "
                : "   ");
        return $" {string.Concat(pins)}  {side.Word()}";
    }
}
