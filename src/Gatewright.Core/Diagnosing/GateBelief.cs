using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>What a gate is believed to be, given one cause: its state's mean and covariance.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Mean">Gate pitch, lean aft and lean out.</param>
/// <param name="Covariance">Theirs, in that order, in square degrees.</param>
public sealed record GateBelief(GatePlace Gate, GateState Mean, CovarianceMatrix Covariance)
{
    /// <summary>The belief after a change that is itself uncertain, each unknown on its own.</summary>
    public GateBelief After(GateState change, GateState changeU)
    {
        double[] rows = new double[9];
        double[] added = [changeU.GatePitch.Degrees, changeU.Pin.Aft.Degrees, changeU.Pin.Out.Degrees];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                rows[(3 * i) + j] = Covariance[i, j] + (i == j ? added[i] * added[i] : 0);
            }
        }

        return new(
            Gate,
            GateState.FromDegrees(
                Mean.GatePitch.Degrees + change.GatePitch.Degrees,
                Mean.Pin.Aft.Degrees + change.Pin.Aft.Degrees,
                Mean.Pin.Out.Degrees + change.Pin.Out.Degrees),
            new(3, rows));
    }

    /// <summary>The belief once an unknown has been made new: its old value no longer matters.</summary>
    public GateBelief WithNew(int unknown, double degrees, double uDegrees)
    {
        double[] mean = [Mean.GatePitch.Degrees, Mean.Pin.Aft.Degrees, Mean.Pin.Out.Degrees];
        mean[unknown] = degrees;
        double[] rows = new double[9];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                rows[(3 * i) + j] = i == unknown || j == unknown
                    ? (i == j ? uDegrees * uDegrees : 0)
                    : Covariance[i, j];
            }
        }

        return new(Gate, GateState.FromDegrees(mean[0], mean[1], mean[2]), new(3, rows));
    }

    /// <summary>The variance of its pitch at an oar angle, in square degrees.</summary>
    public double PitchVariance(OarAngle at)
    {
        PitchSlopes slopes = PitchSlopes.At(at, Gate.Side, Lie.Upright);
        return Covariance.Variance([1, slopes.Aft, slopes.Out]);
    }

    /// <summary>The exact pitch on a level boat at the mean.</summary>
    public Pitch PitchAt(OarAngle at) => PitchGeometry.At(at, Mean, Gate.Side);
}
