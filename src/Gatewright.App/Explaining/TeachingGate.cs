using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Drawings.Stroke;
using Gatewright.Drawings.Teaching;

namespace Gatewright.App.Explaining;

/// <summary>One gate as the sliders stand, and all that follows from it exactly. Every number is in degrees.</summary>
public sealed record TeachingGate
{
    private const int Steps = 24;

    /// <summary>The pitch of gate and insert.</summary>
    public double GatePitch { get; init; } = 4;

    /// <summary>The pin's lean to the stern; negative to the bow.</summary>
    public double PinAft { get; init; }

    /// <summary>The pin's lean away from the hull; negative towards it.</summary>
    public double PinOut { get; init; }

    /// <summary>How high the bow is, as the boat lies.</summary>
    public double BowHigh { get; init; }

    /// <summary>How low the port side is, as the boat lies.</summary>
    public double PortLow { get; init; }

    /// <summary>The oar from abeam; positive to the catch.</summary>
    public double OarAngle { get; init; }

    /// <summary>What the sleeve adds for the blade.</summary>
    public double Sleeve { get; init; }

    /// <summary>The side the gate stands on.</summary>
    public Side Side { get; init; } = Side.Port;

    /// <summary>How the boat lies in the curve.</summary>
    public Lie Lie { get; init; } = Lie.Upright;

    /// <summary>The gate.</summary>
    public GateState Gate => GateState.FromDegrees(GatePitch, PinAft, PinOut);

    /// <summary>The hull.</summary>
    public HullAttitude Hull => HullAttitude.FromDegrees(BowHigh, PortLow);

    /// <summary>Where the oar is.</summary>
    public OarAngle At => Core.Geometry.OarAngle.FromDegrees(OarAngle);

    /// <summary>What is drawn, the boat upright.</summary>
    public SceneGeometry Scene => new(Gate, Side, At, Hull, Lie.Upright, SleeveError.FromDegrees(Sleeve));

    /// <summary>What a perfect gauge shows on this gate, or on the same gate on the other side, upright or upside down.</summary>
    public double Shown(Side side, Lie lie) => PitchGeometry.At(At, Gate, side, Hull, lie).Degrees;

    /// <summary>What a perfect gauge shows from the catch to the finish, the boat lying as chosen.</summary>
    public IReadOnlyList<CurvePoint> Curve(StationAngles angles)
    {
        ArgumentNullException.ThrowIfNull(angles);
        (double from, double to) = (angles.Catch.Degrees, angles.Finish.Degrees);
        return [.. Enumerable.Range(0, Steps + 1).Select(i => Point(from + ((to - from) * i / Steps)))];
    }

    /// <summary>What it shows where the oar is.</summary>
    public CurvePoint Now => Point(OarAngle);

    private CurvePoint Point(double at)
    {
        var angle = Core.Geometry.OarAngle.FromDegrees(at);
        return new(angle, new(PitchGeometry.At(angle, Gate, Side, Hull, Lie).Angle, Angle.Zero));
    }
}
