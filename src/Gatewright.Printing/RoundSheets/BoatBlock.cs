using System.Globalization;
using Gatewright.Core;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;
using Gatewright.Words;

namespace Gatewright.Printing.RoundSheets;

/// <summary>The boxes of one boat: how it lies, and each gate at each station in the order in which they are walked past.</summary>
internal sealed class BoatBlock
{
    private const double StationWidth = 22;
    private const double WidestBox = 19;
    private const double HeadHeight = 16;
    private const double GatesHeight = 9.4;
    private const double NoteHeight = 7;

    private readonly Imprint _imprint;
    private readonly BoatStanding _boat;
    private readonly IReadOnlyList<Station> _stations;
    private readonly IReadOnlyList<GatePlace> _walk;
    private readonly Lie _usually;

    public BoatBlock(Imprint imprint, Club club, BoatStanding boat, IReadOnlyList<Station> stations)
    {
        (_imprint, _boat, _stations) = (imprint, boat, stations);
        _walk = [.. RoundOrder.Of(BoatGates.Of(club, boat.View), [Station.Abeam]).Select(step => step.Gate)];
        _usually = BoatBerth.Of(boat.View).Lie;
    }

    /// <summary>How high it is.</summary>
    public double Height => HeadHeight + (_walk.Count == 0 ? 6 : GatesHeight + (_stations.Count * TickBox.WritingHeight) + NoteHeight);

    /// <summary>Draws it.</summary>
    public void Draw(Flow flow)
    {
        Leaf leaf = flow.Leaf;
        double top = flow.Y;
        leaf.Line(Frame.Left, top + 1, Frame.Right, top + 1, 0.4);
        Head(leaf, top);
        double y = top + HeadHeight;
        if (_walk.Count == 0)
        {
            leaf.Text(_imprint.Texts["Round.NoClass"], Frame.Left, y + 1, Lettering.Note);
        }
        else
        {
            Boxes(leaf, y);
            var note = new PencilLine(leaf, top + Height - 1.8);
            note.Write(_imprint.Texts["Round.Note"], Frame.Right - note.X - leaf.Width(_imprint.Texts["Round.Note"], Lettering.Note) - 2);
        }

        flow.Y = top + Height;
    }

    private void Head(Leaf leaf, double top)
    {
        double y = top + 6.4;
        double right = Frame.Right;
        if (_boat.StaysAshore)
        {
            string held = _imprint.Texts[_boat.Holds.Count > 0 ? "Round.Held" : "Round.Ashore"];
            leaf.Text(held, right, y, Lettering.NoteBold, Align.Right);
            right -= leaf.Width(held, Lettering.NoteBold) + 6;
            VerdictShape.Tag(leaf, right + 2.5, y - 1.4, 4.6);
            right -= 4;
        }

        string usually = _imprint.Texts["Round.Usually", _imprint.Say.Names.Lie(_usually)];
        leaf.Text(usually, right, y, Lettering.Note, Align.Right);
        right -= leaf.Width(usually, Lettering.Note) + 4;
        string boatClass = _boat.View.Class?.Name ?? "–";
        double forClass = leaf.Width(boatClass, Lettering.WorkBold) + 4;
        Lettering name = leaf.Fitting(_boat.View.Name, right - Frame.Left - forClass - 3, Lettering.WorkBold, 9);
        string shown = leaf.Head(_boat.View.Name, right - Frame.Left - forClass - 3, name);
        leaf.Text(shown, Frame.Left, y, name);
        leaf.Text(boatClass, Frame.Left + leaf.Width(shown, name) + 4, y, Lettering.Work);
        Lying(leaf, top + 13.4);
    }

    private void Lying(Leaf leaf, double y)
    {
        var pencil = new PencilLine(leaf, y);
        pencil.Tick(_imprint.Say.Names.Lie(Lie.Upright));
        pencil.Tick(_imprint.Say.Names.Lie(Lie.Inverted));
        pencil.Write(_imprint.Texts["Level.BowHigh"], 9.5);
        pencil.Write(_imprint.Texts["Level.PortLow"], 9.5);
        pencil.Tick(_imprint.Texts["Level.Rack"]);
        pencil.Tick(_imprint.Texts["Level.Eye"]);
    }

    /// <summary>Over the boxes of a side, which way they are walked past; in a short boat the side alone.</summary>
    private void Over(Leaf leaf, Side side, string text, double left, double width, double y)
    {
        string way = _imprint.Texts[text];
        string told = leaf.Width(way, Lettering.Note) < width ? way : _imprint.Say.Names.Side(side);
        leaf.Text(told, left + (width / 2), y, Lettering.Note, Align.Middle);
    }

    private void Boxes(Leaf leaf, double y)
    {
        double box = Math.Min(WidestBox, (Frame.Width - StationWidth) / _walk.Count);
        double left = Frame.Left + StationWidth;
        int port = _walk.Count(g => g.Side == Side.Port);
        Over(leaf, Side.Port, "Round.Port", left, port * box, y + 2.6);
        Over(leaf, Side.Starboard, "Round.Starboard", left + (port * box), (_walk.Count - port) * box, y + 2.6);
        for (int i = 0; i < _walk.Count; i++)
        {
            leaf.Text(_walk[i].Seat.ToString(CultureInfo.InvariantCulture), left + ((i + 0.5) * box), y + 7.8, Lettering.WorkBold, Align.Middle);
        }

        y += GatesHeight;
        foreach (Station station in _stations)
        {
            leaf.Fit(Sentence.Capital(_imprint.Say.Names.Station(station)), Frame.Left, y + 6, StationWidth - 1, Lettering.Work, 9);
            for (int i = 0; i < _walk.Count; i++)
            {
                leaf.Box(left + (i * box), y, box, TickBox.WritingHeight, 0.3);
            }

            y += TickBox.WritingHeight;
        }

        // Where the walk turns round the stern.
        double turn = left + (port * box);
        leaf.Line(turn, y - (_stations.Count * TickBox.WritingHeight), turn, y, 0.9);
    }
}
