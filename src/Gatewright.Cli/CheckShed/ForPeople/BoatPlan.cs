using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>
/// A boat in plan, bow at the top: the riggers reach out to port (left, facing the bow) and starboard, and at the end
/// of each, where its pin stands, its verdict; under the rigger the pitches.
/// </summary>
/// <remarks>
/// <code>
///               good ●──────────┤  3  ├──────────◆ adjust
///   4.5±0.4   4.0±0.4   3.5±0.4 │     │  4.5±0.4   4.0±0.4   1.0±0.4◆
/// </code>
/// </remarks>
internal sealed class BoatPlan
{
    private const int HalfHull = 3;
    private const int RiggerLength = 11;
    private const int EndRows = 3;
    private const int SeatRows = 2;

    private readonly BoatVerdict _boat;
    private readonly Canvas _canvas;
    private readonly int _keel;
    private readonly bool _hasMore;

    private BoatPlan(BoatVerdict boat, int width)
    {
        _boat = boat;
        _keel = width / 2;
        _hasMore = boat.Gates.Any(gate => gate.Pitches.Count > Stations.All.Count);
        _canvas = new(width, (2 * EndRows) + (boat.Class.Seats * RowsASeat));
    }

    private int RowsASeat => _hasMore ? SeatRows + 1 : SeatRows;

    /// <summary>The columns a plan cannot do with less of.</summary>
    public const int LeastWidth = 72;

    public static IEnumerable<Line> Draw(BoatVerdict boat, int width)
    {
        var plan = new BoatPlan(boat, width);
        plan.DrawEnds();
        for (int seat = 1; seat <= boat.Class.Seats; seat++)
        {
            plan.DrawSeat(seat);
        }

        return plan._canvas.Lines();
    }

    private void DrawEnds()
    {
        DrawEnd(0, 1, '╷', '╱', '╲');
        DrawEnd(_canvas.Height - 1, -1, '╵', '╲', '╱');
        _canvas.Put(_keel + 2, 0, "bow");
        _canvas.Put(_keel + 2, _canvas.Height - 1, "stern");
        foreach (Side side in (ReadOnlySpan<Side>)[Side.Port, Side.Starboard])
        {
            var columns = new PlanColumns(_keel, HalfHull, side);
            string word = side.Word();
            _canvas.Put(columns.Middle - (word.Length / 2), 0, word, Ink.Strong);
            foreach (Station station in Stations.All)
            {
                _canvas.PutBefore(columns.FigureEnd(station), 1, station.Word(), Ink.Quiet);
            }
        }
    }

    private void DrawEnd(int tip, int down, char point, char port, char starboard)
    {
        _canvas.Put(_keel, tip, point.ToString(), Ink.Quiet);
        for (int step = 1; step < HalfHull; step++)
        {
            int y = tip + (down * step);
            _canvas.Put(_keel - step, y, port.ToString(), Ink.Quiet);
            _canvas.Put(_keel + step, y, starboard.ToString(), Ink.Quiet);
        }
    }

    private void DrawSeat(int seat)
    {
        int y = EndRows + ((seat - 1) * RowsASeat);
        for (int row = 0; row < RowsASeat; row++)
        {
            _canvas.Put(_keel - HalfHull, y + row, "│", Ink.Quiet);
            _canvas.Put(_keel + HalfHull, y + row, "│", Ink.Quiet);
        }

        _canvas.Put(_keel, y, Figures.Degrees(seat, 0), Ink.Strong);
        foreach (GateVerdict gate in _boat.Gates.Where(gate => gate.Gate.Seat == seat))
        {
            DrawGate(gate, y);
        }

        foreach (MissingGate missing in _boat.NotRead.Where(gate => gate.Seat == seat))
        {
            DrawMissing(missing, y);
        }
    }

    private void DrawGate(GateVerdict gate, int y)
    {
        Side side = gate.Gate.Side;
        Ink ink = gate.Verdict.Ink();
        int pin = DrawRigger(side, y, '─');
        if (gate.Verdict == Verdict.Stop)
        {
            DrawOutward(side, pin, y, gate.Verdict.Sign(), ink);
        }
        else
        {
            _canvas.Put(pin, y, gate.Verdict.Mark().ToString(), ink);
            DrawOutward(side, pin - (2 * side.Sign()), y, gate.Verdict.Word(), ink);
        }

        DrawFigures(gate, y + 1);
    }

    private void DrawFigures(GateVerdict gate, int y)
    {
        var columns = new PlanColumns(_keel, HalfHull, gate.Gate.Side);
        foreach (Station station in Stations.All)
        {
            StationPitch pitch = gate.At(station);
            Verdict verdict = gate.WorstAt(station);
            string figure = PitchFigure.Of(pitch) + (pitch.Read ? " " : string.Empty);
            Ink ink = verdict != Verdict.Good ? verdict.Ink() : pitch.Read ? Ink.Plain : Ink.Quiet;
            _canvas.PutBefore(columns.FigureEnd(station) + 1, y, figure, ink);
            if (verdict != Verdict.Good)
            {
                _canvas.Put(columns.FigureEnd(station) + (pitch.Read ? 0 : 1), y, verdict.Mark().ToString(), ink);
            }
        }

        string more = string.Join("  ", gate.Pitches.Skip(Stations.All.Count).Select(p => $"{p.At} {Figures.Tight(p.Pitch)}"));
        _canvas.PutBefore(columns.FigureEnd(Station.Finish), y + 1, more);
    }

    private void DrawMissing(MissingGate missing, int y)
    {
        if (missing.Side is { } side)
        {
            int pin = DrawRigger(side, y, '╌');
            DrawOutward(side, pin - side.Sign(), y, "not read", Ink.Quiet);
            return;
        }

        _canvas.Put(_keel + HalfHull + 2, y, "not read (its side is not known)", Ink.Quiet);
    }

    /// <summary>The arm from the hull to the pin; returns the pin's column.</summary>
    private int DrawRigger(Side side, int y, char arm)
    {
        int hull = _keel - (side.Sign() * HalfHull);
        int pin = hull - (side.Sign() * (RiggerLength + 1));
        _canvas.Put(hull, y, side == Side.Port ? "┤" : "├", Ink.Quiet);
        _canvas.Row(Math.Min(hull, pin) + 1, Math.Max(hull, pin) - 1, y, arm);
        return pin;
    }

    /// <summary>Text that begins at a column and goes on away from the hull.</summary>
    private void DrawOutward(Side side, int x, int y, string text, Ink ink)
    {
        if (side == Side.Port)
        {
            _canvas.PutBefore(x + 1, y, text, ink);
        }
        else
        {
            _canvas.Put(x, y, text, ink);
        }
    }
}
