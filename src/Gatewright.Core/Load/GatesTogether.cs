using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Simulating;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>All gates of a boat and the oars in them together, from which its balance is worked out.</summary>
/// <remarks>
/// What a gate is, is believed over all stories of the diagnosis, with what gates share; the oar in it adds its sleeve, and goes
/// through its seat's own arc. At any moment all oars are as far through their arcs. The gauge's zero moves all gates
/// alike: it cancels in the differences of seats and, in a boat with as many oars on either side, in the roll. A hull that lay
/// rolled while it was read looks like outward lean with opposite signs on the two sides: that adds up in the roll.
/// </remarks>
internal sealed class GatesTogether
{
    private readonly Diagnosis _diagnosis;
    private readonly GateOnWater[] _gates;
    private readonly SeatGates[] _seats;
    private readonly SleevesOnWater _sleeves;
    private readonly OarOnWater[] _oars;
    private readonly DriveProfile _profile;
    private readonly Func<double> _normal;

    public GatesTogether(BoatCheck check, SeatsOnWater seats, DriveProfile profile, Draws draws)
    {
        Diagnosis diagnosis = check.Diagnosis;
        MeasuringSettings measuring = check.Settings.Diagnosing.Measuring;
        (_diagnosis, _profile, _normal) = (diagnosis, profile, draws.StandardNormal);
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

        GateOnWater GateAt(int i, OarCircle oar, StationAngles drive)
        {
            GateDiagnosis gate = diagnosis.Gates[i];
            GateState target = check.Context.Target(gate.Gate) ?? check.Settings.Diagnosing.Spreads.Target;
            var load = new OarLoad(oar, check.Readings.Class.Rowing, gate.Gate.Side, profile, drive);
            return new(gate, target, new(sleeves[i].Value), load);
        }
    }

    /// <summary>What comes of them.</summary>
    public BoatBalance Balance()
    {
        RollPoint[] roll = RollThroughDrive();
        (MendFirst forRoll, MendFirst forLoad) = new MendChoice(_gates, _sleeves).Of(_diagnosis.Weights, _normal);
        return new(_profile, roll, MeanOf(roll), SeatBySeat(), forRoll, forLoad);
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

    private LoadEstimate MeanOf(RollPoint[] roll)
    {
        double sum = 0;
        for (int node = 0; node < roll.Length; node++)
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
