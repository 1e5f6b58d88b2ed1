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
/// What a gate is, is believed over all stories of the diagnosis, with what gates share; the oar in it adds its sleeve, and goes
/// through its seat's own arc. At any moment all oars are as far through their arcs. The gauge's zero moves all gates
/// alike: it cancels in the differences of seats and, in a boat with as many oars on either side, in the roll. A hull that lay
/// rolled while it was read looks like outward lean with opposite signs on the two sides: that adds up in the roll.
/// </remarks>
public sealed class BoatBalance
{
    private readonly Diagnosis _diagnosis;
    private readonly GateOnWater[] _gates;
    private readonly SeatGates[] _seats;
    private readonly SleevesOnWater _sleeves;
    private readonly OarOnWater[] _oars;

    private BoatBalance(BoatCheck check, SeatsOnWater seats, DriveProfile profile, Draws draws)
    {
        Diagnosis diagnosis = check.Diagnosis;
        MeasuringSettings measuring = check.Settings.Diagnosing.Measuring;
        (_diagnosis, Profile) = (diagnosis, profile);
        _sleeves = new(diagnosis, check.Readings, seats, check.Settings.Diagnosing);
        _gates = new GateOnWater[diagnosis.Gates.Count];
        _oars = new OarOnWater[_gates.Length];
        Estimate[] sleeves = [.. Enumerable.Range(0, _gates.Length).Select(i => _sleeves[i])];
        var drives = new List<SeatGates>();
        foreach (IGrouping<int, int> seat in Enumerable.Range(0, _gates.Length).GroupBy(i => diagnosis.Gates[i].Gate.Seat))
        {
            var drive = SeatDrive.Of(seats.Rig(seat.Key), measuring.Angles(check.Readings.Class.Rowing), measuring.HeldAngleU);
            foreach (int i in seat)
            {
                _gates[i] = GateAt(i, drive.Oar, drive.Drive);
                _oars[i] = OarAt(sleeves[i], _sleeves.IsRead[i], drive);
            }

            drives.Add(new(drive, [.. seat], GateAt));
        }

        _seats = [.. drives];
        Roll = RollThroughDrive();
        MeanRoll = MeanOf(Roll);
        Gates = SeatBySeat();
        (ForRoll, ForLoad) = new MendChoice(_gates, _sleeves).Of(diagnosis.Weights, draws.StandardNormal);

        GateOnWater GateAt(int i, OarCircle oar, StationAngles drive)
        {
            GateDiagnosis gate = diagnosis.Gates[i];
            GateState target = check.Context.Target(gate.Gate) ?? check.Settings.Diagnosing.Spreads.Target;
            var load = new OarLoad(oar, check.Readings.Class.Rowing, gate.Gate.Side, profile, drive);
            return new(gate, target, new(sleeves[i].Value), load);
        }
    }

    /// <summary>How hard is pulled.</summary>
    public DriveProfile Profile { get; }

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
    /// <param name="seats">The rig of each seat and the sleeve of each oar.</param>
    /// <param name="profile">How hard is pulled.</param>
    /// <param name="draws">For the question which gate first: the same numbers give the same answer.</param>
    /// <returns>Null while not every gate of the boat was read: of a sum with a gap nothing can be said.</returns>
    public static BoatBalance? Of(BoatCheck check, SeatsOnWater seats, DriveProfile profile, Draws draws)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(seats);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(draws);
        return check.Diagnosis.Gates.Count == check.Readings.Class.Gates ? new(check, seats, profile, draws) : null;
    }

    private static OarOnWater OarAt(Estimate sleeve, bool isRead, SeatDrive drive)
    {
        (Estimate atCatch, Estimate finish) = drive.Ends();
        return new(sleeve, isRead, atCatch, finish, drive.IsOwn);
    }

    private RollPoint[] RollThroughDrive()
    {
        var points = new RollPoint[DriveNodes.Count];
        var shares = new GateShare[_gates.Length];
        for (int node = 0; node < points.Length; node++)
        {
            (double sum, double angles) = (0, 0);
            for (int i = 0; i < _gates.Length; i++)
            {
                GateOnWater gate = _gates[i];
                sum += gate.RollLever(node) * gate.Lift(node);
                angles += gate.Nodes.Angles[node].Degrees;
                shares[i] = gate.Share(node, gate.RollLever(node));
            }

            points[node] = new(OarAngle.FromDegrees(angles / _gates.Length), new(sum, U(shares, node, _ => 1)));
        }

        return points;
    }

    private LoadEstimate MeanOf(IReadOnlyList<RollPoint> roll)
    {
        double sum = 0;
        for (int node = 0; node < roll.Count; node++)
        {
            sum += _gates[0].Nodes.Shares[node] * roll[node].Roll.Value;
        }

        GateShare[] shares = Array.ConvertAll(_gates, g => g.MeanShare(g.RollLever));
        return new(sum, U(shares, GateFigures.Roll, _ => 1));
    }

    private GateBalance[] SeatBySeat()
    {
        double[] handles = Array.ConvertAll(_gates, g => g.MeanHandle);
        GateShare[] ofHandles = Array.ConvertAll(_gates, g => g.HandleSlopes);
        double mean = handles.Sum() / handles.Length;
        var seats = new GateBalance[_gates.Length];
        for (int i = 0; i < seats.Length; i++)
        {
            int own = i;
            GateOnWater gate = _gates[i];
            GateShare[] apart = [.. ofHandles.Select((share, j) => Times(share, Apart(j)))];
            GateShare[] roll = [gate.MeanShare(gate.RollLever)];
            double moment = gate.Mean(gate.RollLever);
            seats[i] = new(
                gate.Gate,
                new(handles[i], U([ofHandles[i]], GateFigures.Handle, Alone)),
                new(handles[i] - mean, U(apart, GateFigures.Handle, Apart)),
                new(moment, U(roll, GateFigures.Roll, Alone)),
                new(moment - gate.MeanAtTarget(gate.RollLever), UOfGate(roll, Alone)),
                _oars[i]);

            double Alone(int j) => j == own ? 1 : 0;

            double Apart(int j) => Alone(j) - (1.0 / seats.Length);
        }

        return seats;
    }

    private double U(GateShare[] shares, int figure, Func<int, double> weight) =>
        Math.Sqrt(_sleeves.Variance(shares) + OfRigs(figure, weight));

    /// <summary>The sleeve is in a gate's roll both as it is and at its target.</summary>
    private double UOfGate(GateShare[] shares, Func<int, double> weight) =>
        Math.Sqrt(_diagnosis.Sum(shares).Variance + OfRigs(GateFigures.RollOff, weight));

    private double OfRigs(int figure, Func<int, double> weight)
    {
        double variance = 0;
        foreach (SeatGates seat in _seats)
        {
            variance += seat.Variance(figure, weight);
        }

        return variance;
    }

    private static GateShare Times(GateShare share, double factor) =>
        new(share.Gate, factor * share.GatePitch, factor * share.Aft, factor * share.Out);
}
