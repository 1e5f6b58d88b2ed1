namespace Gatewright.Core.Stroke;

/// <summary>A stroke with the uncertainty of each of its figures.</summary>
public sealed class MeasuredStroke
{
    private readonly double[] _u;

    private MeasuredStroke(MeasuredSeat seat, StrokeGeometry geometry, double[] u) => (Seat, Geometry, _u) = (seat, geometry, u);

    /// <summary>The rig as it is known.</summary>
    public MeasuredSeat Seat { get; }

    /// <summary>The stroke at the best values.</summary>
    public StrokeGeometry Geometry { get; }

    /// <summary>
    /// The stroke of a rig as it is known. The rower's reach is uncertain too: by 2 cm at either end and 3 cm of arms, which is
    /// most of what catch and finish are uncertain by.
    /// </summary>
    /// <returns>Null where there is no stroke, or one so near the edge of what can be rowed that no uncertainty can be told.</returns>
    public static MeasuredStroke? Of(MeasuredSeat seat, Reach reach, OarPoints points)
    {
        ArgumentNullException.ThrowIfNull(seat);
        if (StrokeGeometry.Of(seat.Rig, reach, points) is not { } geometry)
        {
            return null;
        }

        var inputs = new StrokeInputs(seat, reach, points);
        double[] u = inputs.U(StrokeFigures.All.Count, inputs.Figures);
        return Array.TrueForAll(u, double.IsFinite) ? new(seat, geometry, u) : null;
    }

    /// <summary>A figure with its standard uncertainty, in its unit.</summary>
    public (double Value, double U) this[StrokeFigure figure] => (Geometry[figure], _u[(int)figure]);
}
