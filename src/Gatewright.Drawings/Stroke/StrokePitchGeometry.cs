using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Drawings.Stroke;

/// <summary>Where the pitch through a stroke stands on its drawing: catch on the left, as the stroke goes; pitch upwards.</summary>
public sealed class StrokePitchGeometry
{
    /// <summary>How wide the drawing is.</summary>
    public const double Width = 360;

    /// <summary>How high the drawing is.</summary>
    public const double Height = 260;

    /// <summary>How many standard uncertainties the band reaches to each side.</summary>
    public const double Coverage = 2;

    private readonly Standard? _standard;
    private readonly StationAngles _angles;

    /// <summary>A drawing wide and high enough for all of it.</summary>
    public StrokePitchGeometry(IReadOnlyList<CurvePoint> curve, IReadOnlyList<CurvePoint> read, Standard? standard, StationAngles angles)
    {
        (_standard, _angles) = (standard, angles);
        StationLimits[] limits = standard is null ? [] : [.. Stations.All.Select(standard.At)];
        double[] all =
        [
            0, 5,
            .. curve.Concat(read).SelectMany(p => new[] { Low(p), High(p) }),
            .. limits.SelectMany(l => new[] { l.Floor.Degrees, l.Highest.Degrees }),
        ];
        double[] at = [angles.Catch.Degrees, angles.Finish.Degrees, .. curve.Concat(read).Select(p => p.At.Degrees)];
        X = new(at.Max(), at.Min(), 52, Width - 24);
        Y = new(all.Max() + 0.5, all.Min() - 0.5, 12, Height - 34);
    }

    /// <summary>Oar angles in degrees, from the catch to the finish.</summary>
    public Scale X { get; }

    /// <summary>Pitch in degrees, the highest at the top.</summary>
    public Scale Y { get; }

    /// <summary>The place of a point.</summary>
    public Spot At(CurvePoint point) => new(X[point.At.Degrees], Y[point.Pitch.Value.Degrees]);

    /// <summary>From a point's lower to its upper end, twice its uncertainty to each side.</summary>
    public (double Low, double High) Bar(CurvePoint point) => (Y[Low(point)], Y[High(point)]);

    /// <summary>The curve.</summary>
    public string Line(IEnumerable<CurvePoint> curve) => Outline.Through(curve.Select(At)).ToString();

    /// <summary>The band about the curve.</summary>
    public string Band(IReadOnlyList<CurvePoint> curve) => Outline.Through(
    [
        .. curve.Select(p => new Spot(X[p.At.Degrees], Y[High(p)])),
        .. curve.Reverse().Select(p => new Spot(X[p.At.Degrees], Y[Low(p)])),
    ]).Close().ToString();

    /// <summary>The limits at each station: a box from the lowest to the highest good pitch, and the floor's height.</summary>
    public IEnumerable<(Station Station, Box Within, double Floor)> Limits => _standard is null ? [] : Stations.All.Select(station =>
    {
        StationLimits limits = _standard.At(station);
        double top = Y[limits.Highest.Degrees];
        return (station, new Box(X[_angles.At(station).Degrees] - 13, top, 26, Y[limits.Lowest.Degrees] - top), Y[limits.Floor.Degrees]);
    });

    /// <summary>Where a station stands along the stroke.</summary>
    public double Along(Station station) => X[_angles.At(station).Degrees];

    private static double Low(CurvePoint point) => point.Pitch.Value.Degrees - (Coverage * point.Pitch.U.Degrees);

    private static double High(CurvePoint point) => point.Pitch.Value.Degrees + (Coverage * point.Pitch.U.Degrees);
}
