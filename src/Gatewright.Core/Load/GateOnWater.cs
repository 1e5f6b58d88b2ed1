using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Load;

/// <summary>One gate and its oar through the drive, as they are believed to be and as they would be with the gate at its target.</summary>
internal sealed class GateOnWater
{
    private readonly OarLoad _load;
    private readonly DriveNodes _nodes;
    private readonly double[] _lifts;
    private readonly double[] _atTarget;
    // How the lift follows the pitch at a node, in newtons a degree.
    private readonly double[] _perDegree;

    public GateOnWater(GateDiagnosis gate, GateState target, SleeveError sleeve, OarLoad load)
    {
        (Gate, Target, _load, _nodes) = (gate.Gate, target, load, new(load.Drive));
        GateState mean = GateState.FromDegrees(gate.GatePitch.Value.Degrees, gate.LeanAft.Value.Degrees, gate.LeanOut.Value.Degrees);
        _lifts = new double[_nodes.Angles.Count];
        _atTarget = new double[_lifts.Length];
        _perDegree = new double[_lifts.Length];
        for (int node = 0; node < _lifts.Length; node++)
        {
            OarAngle at = _nodes.Angles[node];
            Pitch pitch = PitchGeometry.At(at, mean, Gate.Side, sleeve: sleeve);
            _lifts[node] = load.LiftNewtons(at, pitch);
            _atTarget[node] = load.LiftNewtons(at, PitchGeometry.At(at, target, Gate.Side, sleeve: sleeve));
            _perDegree[node] = load.LiftPerDegree(at, pitch);
        }
    }

    public GatePlace Gate { get; }

    public GateState Target { get; }

    /// <summary>Where its oar is at each part of the drive.</summary>
    public DriveNodes Nodes => _nodes;

    /// <summary>The blade's lift at a node, in newtons.</summary>
    public double Lift(int node) => _lifts[node];

    /// <summary>The same at the gate's target.</summary>
    public double AtTarget(int node) => _atTarget[node];

    /// <summary>Newton metres of roll for a newton of lift, with the sign of the side.</summary>
    public double RollLever(int node) => _load.RollLeverMetres(_nodes.Angles[node]);

    /// <summary>Newtons at the handle for a newton of lift.</summary>
    public double HandleShare => _load.HandleShare;

    /// <summary>The handle's load, as the mean over the drive.</summary>
    public double MeanHandle => Mean(OfHandle);

    /// <summary>How the handle's mean load follows the gate's unknowns.</summary>
    public GateShare HandleSlopes => MeanShare(OfHandle);

    /// <summary>The lift times something, as the mean over the drive.</summary>
    public double Mean(Func<int, double> times) => MeanOf(_lifts, times);

    /// <summary>The same at the gate's target.</summary>
    public double MeanAtTarget(Func<int, double> times) => MeanOf(_atTarget, times);

    /// <summary>How the lift at a node times something follows the gate's unknowns; a sleeve enters as the gate's own pitch does.</summary>
    public GateShare Share(int node, double times)
    {
        PitchSlopes slopes = PitchSlopes.At(_nodes.Angles[node], Gate.Side, Lie.Upright);
        double perDegree = times * _perDegree[node];
        return new(Gate, perDegree, perDegree * slopes.Aft, perDegree * slopes.Out);
    }

    /// <summary>The same as the mean over the drive.</summary>
    public GateShare MeanShare(Func<int, double> times)
    {
        (double own, double aft, double leanOut) = (0, 0, 0);
        for (int node = 0; node < _lifts.Length; node++)
        {
            GateShare share = Share(node, _nodes.Shares[node] * times(node));
            own += share.GatePitch;
            aft += share.Aft;
            leanOut += share.Out;
        }

        return new(Gate, own, aft, leanOut);
    }

    private double OfHandle(int node) => _load.HandleShare;

    private double MeanOf(double[] lifts, Func<int, double> times)
    {
        double sum = 0;
        for (int node = 0; node < lifts.Length; node++)
        {
            sum += _nodes.Shares[node] * times(node) * lifts[node];
        }

        return sum;
    }
}
