using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Drawings.Stroke;

/// <summary>The pitch of one gate through the stroke, as its state lets one expect.</summary>
public static class StrokeCurve
{
    private const int Steps = 32;

    /// <summary>The curve from the catch to the finish on a level boat: exact in its value, to first order in its uncertainty.</summary>
    /// <param name="gate">What the gate is believed to be.</param>
    /// <param name="covariance">Of gate pitch, lean aft and lean out, in this order, in degrees squared.</param>
    /// <param name="side">The side the gate stands on.</param>
    /// <param name="angles">Where the stroke begins and ends.</param>
    public static IReadOnlyList<CurvePoint> Of(GateState gate, CovarianceMatrix covariance, Side side, StationAngles angles)
    {
        return [.. Enumerable.Range(0, Steps + 1).Select(i => Point(
            OarAngle.FromDegrees(angles.Catch.Degrees + ((angles.Finish.Degrees - angles.Catch.Degrees) * i / Steps))))];

        CurvePoint Point(OarAngle at)
        {
            var slopes = PitchSlopes.At(at, side, Lie.Upright);
            double u = Math.Sqrt(covariance.Variance([1, slopes.Aft, slopes.Out]));
            return new(at, new(PitchGeometry.At(at, gate, side).Angle, Angle.FromDegrees(u)));
        }
    }
}
