using Gatewright.Core.Checking;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending.Options;

/// <summary>What a gate is meant to read, station by station, and how far it is from that.</summary>
/// <remarks>
/// The aim is the pitch of the gate's own target (stamp and set leans, else what is usual) wherever the standard allows
/// it, and the middle of the standard's limits where it does not.
/// </remarks>
internal sealed class GateAim
{
    /// <summary>So that a distance of one step is one, though taking it may have cost the last digit.</summary>
    private const double Rounding = 1e-6;

    private readonly double[] _degrees;
    private readonly double _step;

    public GateAim(BoatCheck check, GatePlace gate)
    {
        MeasuringSettings measuring = check.Settings.Diagnosing.Measuring;
        StationAngles angles = measuring.Angles(check.Readings.Class.Rowing);
        Target = check.Context.Target(gate) ?? check.Settings.Diagnosing.Spreads.Target;
        _step = measuring.GaugeResolution.Degrees;
        _degrees = [.. Stations.All.Select(s =>
            Aim(PitchGeometry.At(angles.At(s), Target, gate.Side).Degrees, check.Settings.Standard.At(s)))];
    }

    /// <summary>What the gate is meant to be.</summary>
    public GateState Target { get; }

    /// <summary>The pitch aimed at.</summary>
    public double DegreesAt(Station station) => _degrees[(int)station];

    /// <summary>The sum of squared distances, in steps of the gauge.</summary>
    public int Deviation(IReadOnlyList<PredictedPitch> pitches) => Stations.All.Sum(s =>
    {
        int steps = Steps(pitches[(int)s].Pitch.Value.Degrees - DegreesAt(s));
        return steps * steps;
    });

    private int Steps(double off) => (int)Math.Floor((Math.Abs(off) / _step) + Rounding);

    private static double Aim(double target, StationLimits limits) =>
        target >= limits.Lowest.Degrees && target <= limits.Highest.Degrees
            ? target
            : (limits.Lowest.Degrees + limits.Highest.Degrees) / 2;
}
