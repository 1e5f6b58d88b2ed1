using Gatewright.Core;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.RigSheets;

/// <summary>
/// What is known of a gate beside it: its pitch at each station, the value large and its uncertainty behind it; outermost, what
/// is probably true of the pin.
/// </summary>
internal sealed class GateFigures(Imprint imprint, Leaf leaf)
{
    /// <summary>How high the figures of a gate are, with the room around them, millimetres.</summary>
    public const double Height = 3 * Step;

    private const double Step = 4.8;
    private const double FromKeel = 24.2;
    private const double Block = 35;
    private const double PinWidth = 26.5;

    /// <summary>Draws it about the middle of its seat's row.</summary>
    public void Draw(SheetGate gate, double middle)
    {
        if (gate.Pitches.Count == 0)
        {
            bool isPort = gate.Gate.Side == Side.Port;
            double keel = (Frame.Left + Frame.Right) / 2;
            leaf.Text(
                imprint.Texts["Verdict.NotRead"], isPort ? keel - FromKeel : keel + FromKeel, middle + 1.5, Lettering.Work,
                isPort ? Align.Right : Align.Left);
            Pin(gate, middle);
            return;
        }

        double y = middle - Step + (Lettering.Work.CapitalMm / 2);
        foreach (SheetPitch pitch in gate.Pitches)
        {
            Pitch(pitch, gate.Gate.Side, y);
            y += Step;
        }

        Pin(gate, middle);
    }

    /// <summary>The station, its value, and ± behind it: "catch 4.0 ± 0.3", in brackets where it was not read.</summary>
    private void Pitch(SheetPitch pitch, Side side, double y)
    {
        double keel = (Frame.Left + Frame.Right) / 2;
        Lettering value = pitch.IsRead ? Lettering.WorkBold : Lettering.Work.At(10.5);
        string open = pitch.IsRead ? string.Empty : "(";
        string u = $"± {pitch.U}{(pitch.IsRead ? string.Empty : ")")}";
        double forU = leaf.Width(u, Lettering.Note) + 1.4;
        double right = side == Side.Port ? keel - FromKeel : keel + FromKeel + Block;

        // In the order in which it is read, for whoever has the page read out.
        leaf.Text(imprint.Say.Names.Station(pitch.Station), right - Block, y, Lettering.Note);
        leaf.Text(open + pitch.Value, right - forU, y, value, Align.Right);
        leaf.Text(u, right, y, Lettering.Note, Align.Right);
    }

    private void Pin(SheetGate gate, double middle)
    {
        bool isPort = gate.Gate.Side == Side.Port;
        double keel = (Frame.Left + Frame.Right) / 2;
        double left = isPort ? Frame.Left : Frame.Right - PinWidth;
        if (gate.Pin.Count > 0)
        {
            // Between what was read and what is only probable.
            double between = isPort ? (left + PinWidth + keel - FromKeel - Block) / 2 : (left + keel + FromKeel + Block) / 2;
            leaf.Line(between, middle - (1.35 * Step), between, middle + (1.35 * Step), 0.15);
        }

        double y = middle - ((gate.Pin.Count - 1) * Lettering.Note.LineMm / 2) + (Lettering.Note.CapitalMm / 2);
        foreach (string line in gate.Pin)
        {
            leaf.Fit(line, left, y, PinWidth, Lettering.Note, Lettering.LeastInTheHand);
            y += Lettering.Note.LineMm;
        }
    }
}
