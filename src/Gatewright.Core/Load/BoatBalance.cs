using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Simulating;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>
/// A boat on the water as its gates make it: how it is rolled through the drive, what each seat's hands hold, and which gate
/// to mend first. A model; what it rests on stands in docs/method-load.md.
/// </summary>
/// <remarks>
/// What a gate is, is believed over all stories of the diagnosis, with what gates share. The gauge's zero moves all gates
/// alike: it cancels in the differences of seats and, in a boat with as many oars on either side, in the roll. A hull that lay
/// rolled while it was read looks like outward lean with opposite signs on the two sides: that adds up in the roll.
/// </remarks>
public sealed class BoatBalance
{
    private readonly Diagnosis _diagnosis;
    private readonly GateOnWater[] _gates;
    private readonly DriveNodes _nodes;

    private BoatBalance(BoatCheck check, Func<int, SeatRig> rigs, DriveProfile profile, Draws draws)
    {
        (_diagnosis, Profile) = (check.Diagnosis, profile);
        Drive = check.Settings.Diagnosing.Measuring.Angles(check.Readings.Class.Rowing);
        _nodes = new(Drive);
        GateState usual = check.Settings.Diagnosing.Spreads.Target;
        _gates = new GateOnWater[_diagnosis.Gates.Count];
        for (int i = 0; i < _gates.Length; i++)
        {
            GatePlace gate = _diagnosis.Gates[i].Gate;
            var load = new OarLoad(rigs(gate.Seat), gate.Side, profile, Drive);
            _gates[i] = new(_diagnosis.Gates[i], check.Context.Target(gate) ?? usual, load, _nodes);
        }

        Roll = RollThroughDrive();
        MeanRoll = MeanOf(Roll);
        Gates = SeatBySeat();
        (ForRoll, ForLoad) = new MendChoice(_gates, _nodes).Of(new(_diagnosis.Weights, draws.StandardNormal));
    }

    /// <summary>How hard is pulled.</summary>
    public DriveProfile Profile { get; }

    /// <summary>From which angle to which.</summary>
    public StationAngles Drive { get; }

    /// <summary>The boat's roll moment from catch to finish.</summary>
    public IReadOnlyList<RollPoint> Roll { get; }

    /// <summary>Its mean over the drive.</summary>
    public LoadEstimate MeanRoll { get; }

    /// <summary>Every gate, from the bow.</summary>
    public IReadOnlyList<GateBalance> Gates { get; }

    /// <summary>
    /// Which gate to mend first so that the boat rolls less: of the roll moment the root of its mean square over the drive, in
    /// newton metres.
    /// </summary>
    public MendFirst ForRoll { get; }

    /// <summary>
    /// Which gate to mend first so that the seats feel alike: of the handles' loads the standard deviation from seat to
    /// seat, in newtons.
    /// </summary>
    public MendFirst ForLoad { get; }

    /// <summary>A boat's balance.</summary>
    /// <param name="check">The boat, read and checked.</param>
    /// <param name="rigs">The rig of each seat.</param>
    /// <param name="profile">How hard is pulled.</param>
    /// <param name="draws">For the question which gate first: the same numbers give the same answer.</param>
    /// <returns>Null while not every gate of the boat was read: of a sum with a gap nothing can be said.</returns>
    public static BoatBalance? Of(BoatCheck check, Func<int, SeatRig> rigs, DriveProfile profile, Draws draws)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(rigs);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(draws);
        return check.Diagnosis.Gates.Count == check.Readings.Class.Gates ? new(check, rigs, profile, draws) : null;
    }

    private RollPoint[] RollThroughDrive()
    {
        var points = new RollPoint[_nodes.Angles.Count];
        var shares = new GateShare[_gates.Length];
        for (int node = 0; node < points.Length; node++)
        {
            double sum = 0;
            for (int i = 0; i < _gates.Length; i++)
            {
                GateOnWater gate = _gates[i];
                sum += gate.RollLever(node) * gate.Lift(node);
                shares[i] = gate.Share(node, gate.RollLever(node));
            }

            points[node] = new(_nodes.Angles[node], new(sum, U(shares)));
        }

        return points;
    }

    private LoadEstimate MeanOf(IReadOnlyList<RollPoint> roll)
    {
        double sum = 0;
        var shares = new GateShare[_gates.Length];
        for (int node = 0; node < roll.Count; node++)
        {
            sum += _nodes.Shares[node] * roll[node].Roll.Value;
        }

        for (int i = 0; i < _gates.Length; i++)
        {
            shares[i] = _gates[i].MeanShare(_gates[i].RollLever);
        }

        return new(sum, U(shares));
    }

    private GateBalance[] SeatBySeat()
    {
        double mean = 0;
        double[] handles = new double[_gates.Length];
        var ofHandles = new GateShare[_gates.Length];
        for (int i = 0; i < _gates.Length; i++)
        {
            handles[i] = _gates[i].MeanHandle;
            ofHandles[i] = _gates[i].HandleSlopes;
            mean += handles[i] / _gates.Length;
        }

        var seats = new GateBalance[_gates.Length];
        var apart = new GateShare[_gates.Length];
        for (int i = 0; i < seats.Length; i++)
        {
            GateOnWater gate = _gates[i];
            for (int j = 0; j < apart.Length; j++)
            {
                apart[j] = Times(ofHandles[j], (i == j ? 1 : 0) - (1.0 / apart.Length));
            }

            double roll = gate.Mean(gate.RollLever);
            double uRoll = U([gate.MeanShare(gate.RollLever)]);
            seats[i] = new(
                gate.Gate,
                new(handles[i], U([ofHandles[i]])),
                new(handles[i] - mean, U(apart)),
                new(roll, uRoll),
                new(roll - gate.MeanAtTarget(gate.RollLever), uRoll));
        }

        return seats;
    }

    private double U(ReadOnlySpan<GateShare> shares) => Math.Sqrt(_diagnosis.Sum(shares).Variance);

    private static GateShare Times(GateShare share, double factor) =>
        new(share.Gate, factor * share.GatePitch, factor * share.Aft, factor * share.Out);
}
