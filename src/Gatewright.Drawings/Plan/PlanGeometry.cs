using System.Collections.Concurrent;
using Gatewright.Core;
using Gatewright.Core.Geometry;

namespace Gatewright.Drawings.Plan;

/// <summary>
/// Where everything of a boat stands in its plan: bow at the top, port on the left as one faces the bow. The length is
/// pressed together, the width is true: half the beam is to the spread as in the boat.
/// </summary>
public sealed class PlanGeometry
{
    /// <summary>A list of boats draws the same few plans again and again; there are no more than three sizes of each class.</summary>
    private static readonly ConcurrentDictionary<(BoatClass, PlanSize, CoxPlace), PlanGeometry> Drawn = new();

    private readonly PlanMeasures _measures;
    private readonly double _firstRow;
    private readonly bool _isSmall;
    private string? _hullDrawn;

    /// <summary>The plan of a class at a size.</summary>
    public PlanGeometry(BoatClass boatClass, PlanSize size, CoxPlace cox = CoxPlace.Stern)
    {
        (Class, _isSmall) = (boatClass, size == PlanSize.Small);
        _measures = PlanMeasures.Of(boatClass, size);
        double coxed = boatClass.IsCoxed ? _measures.Cox : 0;
        double bowEnd = _measures.End + (cox == CoxPlace.Bow ? coxed : 0);
        double sternEnd = _measures.End + (cox == CoxPlace.Stern ? coxed : 0);
        double length = bowEnd + (boatClass.Seats * _measures.Row) + sternEnd;

        // Thumbnails of all classes are equally high, so that in a list they show how long each boat is.
        double above = size == PlanSize.Small ? (PlanMeasures.LongestSmall - length) / 2 : 0;
        Height = length + (2 * above);
        _firstRow = above + bowEnd;
        Hull = new(new(Keel, above + 2), length - 4, _measures.Beam);
        CoxMiddle = !boatClass.IsCoxed ? null
            : cox == CoxPlace.Stern ? new(Keel, _firstRow + (boatClass.Seats * _measures.Row) + (0.45 * coxed))
            : new(Keel, _firstRow - (0.5 * coxed));
        Outline = Hull.Path;
        Cockpit = size == PlanSize.Small ? "" : Hull.Cockpit(_firstRow, RowTop(boatClass.Seats + 1), 12);
    }

    /// <summary>The plan of a class at a size; the same object whenever the same is asked for.</summary>
    public static PlanGeometry Of(BoatClass boatClass, PlanSize size, CoxPlace cox = CoxPlace.Stern) =>
        Drawn.GetOrAdd((boatClass, size, cox), static key => new(key.Item1, key.Item2, key.Item3));

    /// <summary>The class drawn.</summary>
    public BoatClass Class { get; }

    /// <summary>How wide the drawing is.</summary>
    public double Width => _measures.Width;

    /// <summary>How high the drawing is.</summary>
    public double Height { get; }

    /// <summary>The keel, from the left.</summary>
    public double Keel => _measures.Width / 2;

    /// <summary>The hull itself.</summary>
    public HullShape Hull { get; }

    /// <summary>The hull's outline as a path.</summary>
    public string Outline { get; }

    /// <summary>The edge of what is open in it as a path; nothing in a thumbnail.</summary>
    public string Cockpit { get; }

    /// <summary>The hull with its seats as SVG; drawn once.</summary>
    internal string HullDrawn => _hullDrawn ??= HullDrawing.Of(this, _isSmall);

    /// <summary>Where the cox is; null in a coxless boat.</summary>
    public Spot? CoxMiddle { get; }

    /// <summary>The square a verdict's mark stands in.</summary>
    public double MarkSize => _measures.MarkSize;

    /// <summary>The strip of the drawing that belongs to a seat and its gates.</summary>
    public Box Row(int seat) => new(0, RowTop(seat), Width, _measures.Row);

    /// <summary>Where a seat's rower sits: on the bow side of the pin, as the feet are to the stern.</summary>
    public Spot Seat(int seat) => new(Keel, RowMiddle(seat) - Math.Min(0.16 * _measures.Row, 9));

    /// <summary>Where the rower's feet are.</summary>
    public Spot Stretcher(int seat) => new(Keel, RowMiddle(seat) + Math.Min(0.33 * _measures.Row, 20));

    /// <summary>Where a gate's pin stands.</summary>
    public Spot Pin(GatePlace gate) => new(Keel + (Outward(gate.Side) * _measures.Reach), RowMiddle(gate.Seat));

    /// <summary>Where a gate's verdict stands.</summary>
    public Spot Mark(GatePlace gate) => Pin(gate).Plus(Outward(gate.Side) * 34, 0);

    /// <summary>Where a gate's figures stand; they end here on the left and begin here on the right.</summary>
    public Spot Figures(GatePlace gate) => Mark(gate).Plus(Outward(gate.Side) * 18, 0);

    /// <summary>The place to touch for a gate: from the edge of the drawing to the hull, as high as the seat's row.</summary>
    public Box Touch(GatePlace gate)
    {
        double half = Keel - _measures.Clear;
        return new(gate.Side == Side.Port ? 0 : Width - half, RowTop(gate.Seat), half, _measures.Row);
    }

    /// <summary>The arms of a rigger, each from the gunwale to its pin: the backstay, from the bow, first.</summary>
    public IReadOnlyList<(Spot Foot, Spot Pin)> Arms(GatePlace gate)
    {
        Spot pin = Pin(gate);
        double step = Math.Min(0.19 * _measures.Row, 13);
        return [.. new[] { -2.2 * step, -step, step }
            .Select(along => (new Spot(Keel + (Outward(gate.Side) * Hull.HalfWidthAt(pin.Y + along)), pin.Y + along), pin))];
    }

    /// <summary>
    /// A piece of the oar about the pin, handle's end first, at an oar angle: towards the catch the handle goes to the
    /// stern and the blade to the bow.
    /// </summary>
    public (Spot Inboard, Spot Outboard) Shaft(GatePlace gate, OarAngle at)
    {
        Spot pin = Pin(gate);
        (double sine, double cosine) = Math.SinCos(at.Angle.Radians);
        double outward = Outward(gate.Side);
        return (pin.Plus(-outward * 16 * cosine, 16 * sine), pin.Plus(outward * 20 * cosine, -20 * sine));
    }

    private static int Outward(Side side) => -side.Sign();

    private double RowTop(int seat) => _firstRow + ((seat - 1) * _measures.Row);

    private double RowMiddle(int seat) => RowTop(seat) + (_measures.Row / 2);
}
