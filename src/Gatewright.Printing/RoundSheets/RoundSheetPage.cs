using Gatewright.Core;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;
using Gatewright.Printing.Sheds;

namespace Gatewright.Printing.RoundSheets;

/// <summary>Lays a blank round out.</summary>
internal sealed class RoundSheetPage(Book book, Club club, IReadOnlyList<RackOfBoats> racks, IReadOnlyList<Station> stations)
{
    private readonly Imprint _imprint = book.Imprint;

    /// <summary>Draws it, on as many pages as it takes.</summary>
    public void Draw()
    {
        var flow = new Flow(book, Head);
        Head(flow);
        foreach (string text in (string[])["Round.How", "Round.Level", "Round.Later"])
        {
            flow.Paragraph(_imprint.Texts[text], Lettering.Note);
        }

        flow.Paragraph(_imprint.Say.Cautions.Lifting, Lettering.NoteBold);
        foreach (RackOfBoats rack in racks)
        {
            string title = rack.Title is { } name ? _imprint.Texts["Sheet.Rack", name] : _imprint.Texts["Shed.NoRack"];
            bool isFirst = true;
            foreach (BoatStanding boat in rack.Boats)
            {
                var block = new BoatBlock(_imprint, club, boat, stations);
                flow.Room(block.Height + (isFirst ? 9 : 0));
                if (isFirst)
                {
                    flow.Y += 2 + Lettering.Heading.LineMm;
                    flow.Leaf.Fit(title, Frame.Left, flow.Y, Frame.Width, Lettering.Heading, Lettering.LeastAtArmsLength);
                    flow.Y += 1.5;
                    isFirst = false;
                }

                block.Draw(flow);
            }
        }
    }

    /// <summary>Who, when and with what: on every page, since pages are handed to several people.</summary>
    private void Head(Flow flow)
    {
        double y = flow.Y + 5;
        Leaf leaf = flow.Leaf;
        var pencil = new PencilLine(leaf, y);
        pencil.Write(_imprint.Texts["Date"], 30);
        pencil.Write(_imprint.Texts["Round.By"], 50);
        pencil.Write(_imprint.Texts["Gauge"], Frame.Right - pencil.X - leaf.Width(_imprint.Texts["Gauge"], Lettering.Note) - 2);
        flow.Y += 8;
    }
}
