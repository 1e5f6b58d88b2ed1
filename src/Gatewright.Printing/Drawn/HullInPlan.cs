using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Drawn;

/// <summary>
/// A boat in plan, bow at the top, port on the left as one faces the bow; its length pressed together, so that each seat's row
/// has room for what is said of it.
/// </summary>
/// <param name="Class">The boat's class.</param>
/// <param name="Keel">The keel, from the left, millimetres.</param>
/// <param name="Top">The tip of the bow, from the top.</param>
/// <param name="Row">From one seat to the next.</param>
/// <param name="End">From either tip to the first or the last row.</param>
internal sealed record HullInPlan(BoatClass Class, double Keel, double Top, double Row, double End)
{
    private const double CoxRoom = 6;

    /// <summary>Where the tip of the stern is.</summary>
    public double Bottom => Top + (2 * End) + (Class.Seats * Row) + (Class.IsCoxed ? CoxRoom : 0);

    // The keel to a pin, millimetres.
    private const double Reach = 14;

    private double HalfBeam => Class.Seats switch { 8 => 5.4, 4 => 4.8, 2 => 4.2, _ => 3.8 };

    /// <summary>The middle of a seat's row.</summary>
    public double Middle(int seat) => Top + End + ((seat - 0.5) * Row);

    /// <summary>Where a gate's pin is, from the left.</summary>
    public double Pin(Side side) => Keel - (side.Sign() * Reach);

    /// <summary>Where a gate's mark is, from the left.</summary>
    public double Mark(Side side) => Keel - (side.Sign() * (Reach + 5.6));

    /// <summary>Draws hull, seats and riggers.</summary>
    public void Draw(Leaf leaf, IEnumerable<GatePlace> gates, GatePlace? lit = null)
    {
        foreach (GatePlace gate in gates)
        {
            Rigger(leaf, gate, gate == lit);
        }

        leaf.Shape(Outline(), isFilled: false, thickness: 0.45);
        leaf.Circle(Keel, Top + 0.4, 0.9, isFilled: true);
        for (int seat = 1; seat <= Class.Seats; seat++)
        {
            double y = Middle(seat);
            leaf.Text($"{seat}", Keel, y + (Lettering.NoteBold.CapitalMm / 2), Lettering.NoteBold, Align.Middle);
            double feet = y + Math.Min(5.2, 0.36 * Row);
            leaf.Line(Keel - 2, feet, Keel + 2, feet, 0.35);
        }

        if (Class.IsCoxed)
        {
            double y = Top + End + (Class.Seats * Row) + (CoxRoom / 2);
            leaf.Circle(Keel, y, 1.1, isFilled: true);
        }
    }

    /// <summary>Draws a gate's verdict beside its pin.</summary>
    public void DrawMark(Leaf leaf, GatePlace gate, Verdict? verdict) =>
        VerdictShape.Draw(leaf, verdict, Mark(gate.Side), Middle(gate.Seat), 6.4);

    private void Rigger(Leaf leaf, GatePlace gate, bool isLit)
    {
        double y = Middle(gate.Seat);
        double pin = Pin(gate.Side);
        double step = Math.Min(2.6, 0.17 * Row);
        foreach (double along in (ReadOnlySpan<double>)[-2.2 * step, -step, step])
        {
            leaf.Line(Keel - (gate.Side.Sign() * HalfWidth(y + along)), y + along, pin, y, 0.35);
        }

        if (isLit)
        {
            leaf.Circle(pin, y, 3.4, isFilled: false, thickness: 0.6);
        }

        leaf.Circle(pin, y, isLit ? 1.5 : 1.1, isFilled: true);
    }

    /// <summary>Half the hull's width at a place along it: b (1 − |s|⁴·⁵), s from −1 at the bow to 1 at the stern.</summary>
    private double HalfWidth(double y)
    {
        double s = Math.Abs((2 * (y - Top) / (Bottom - Top)) - 1);
        return s >= 1 ? 0 : HalfBeam * (1 - Math.Pow(s, 4.5));
    }

    private IEnumerable<(double X, double Y)> Outline()
    {
        const int Steps = 60;
        double[] along = [.. Enumerable.Range(0, Steps + 1).Select(i => Top + ((Bottom - Top) * i / Steps))];
        return [.. along.Select(y => (Keel + HalfWidth(y), y)), .. along.Reverse().Select(y => (Keel - HalfWidth(y), y))];
    }
}
