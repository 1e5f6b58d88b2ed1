using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>One gate, its oar, and how its boat lies, from which the pitch anywhere in the stroke follows.</summary>
/// <param name="Gate">Gate and pin.</param>
/// <param name="Side">The gate's side.</param>
/// <param name="Rowing">Sweep or scull, which sets catch and finish.</param>
/// <param name="Hull">How the hull lies, as it lies.</param>
/// <param name="Lie">Upright or inverted.</param>
/// <param name="Sleeve">The oar's sleeve error.</param>
internal sealed record StrokePitch(
    GateState Gate, Side Side, Rowing Rowing, HullAttitude Hull, Lie Lie, SleeveError Sleeve)
{
    private const int Step = 10;

    private static readonly MeasuringSettings Settings = MeasuringSettings.Default;

    /// <summary>Where the stations are.</summary>
    public StationAngles Stations => Settings.Angles(Rowing);

    /// <summary>Catch to finish: the stations and every 10° between.</summary>
    public IEnumerable<StrokePoint> Points()
    {
        int first = (int)Math.Ceiling(Stations.Catch.Degrees / Step) - 1;
        int last = (int)Math.Floor(Stations.Finish.Degrees / Step) + 1;
        IEnumerable<double> between = Enumerable.Range(last, first - last + 1).Select(step => (double)(step * Step));
        return between
            .Concat(Core.Stations.All.Select(station => Stations.At(station).Degrees))
            .Distinct()
            .OrderDescending()
            .Select(degrees => Stations.Point(OarAngle.FromDegrees(degrees)));
    }

    /// <summary>The gate's pitch: what counts on the water.</summary>
    public Pitch OnLevelHull(OarAngle at) => PitchGeometry.At(at, Gate, Side);

    /// <summary>The blade's pitch, with what the oar's sleeve adds.</summary>
    public Pitch OfBlade(OarAngle at) => PitchGeometry.At(at, Gate, Side, sleeve: Sleeve);

    /// <summary>What a perfect gauge shows on the gate with the boat lying so.</summary>
    public Pitch Shown(OarAngle at, Lie lie) => PitchGeometry.At(at, Gate, Side, Hull, lie);

    /// <summary>What the pin's lean out, or one degree of it where it has none, does to the pitch.</summary>
    public (double Lean, double Change) OfLeanOut(OarAngle at)
    {
        double lean = Gate.Pin.Out.Degrees == 0 ? 1 : Gate.Pin.Out.Degrees;
        return (lean, Change(at, Gate.Pin.Aft.Degrees, lean) - Change(at, Gate.Pin.Aft.Degrees, 0));
    }

    private double Change(OarAngle at, double aft, double leanOut) =>
        PitchGeometry.At(at, GateState.FromDegrees(Gate.GatePitch.Degrees, aft, leanOut), Side).Degrees;
}
