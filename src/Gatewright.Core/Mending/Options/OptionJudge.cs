using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending.Options;

/// <summary>Judges a gate as it is by what was read on it, and what it is to become as if it read so.</summary>
internal sealed class OptionJudge
{
    private readonly BoatCheck _check;
    private readonly CheckSettings _settings;
    private readonly StationAngles _angles;
    private readonly GateVerdict _now;

    public OptionJudge(BoatCheck check, GatePlace gate)
    {
        _check = check;
        _settings = check.Settings;
        _angles = _settings.Diagnosing.Measuring.Angles(check.Readings.Class.Rowing);
        _now = check.Verdict.Gates.Single(g => g.Gate == gate);
        Aim = new(check, gate);
        List<PredictedPitch> pitches = [.. Stations.All.Select(Now)];
        bool above = _now.Reasons.All(r => r.Kind != ReasonKind.Floor);
        bool inside = _now.Reasons.All(r => r.Kind == ReasonKind.Range);
        Left = new(gate, [], pitches, new(above, inside, Aim.Deviation(pitches)));
    }

    /// <summary>What the gate is meant to be.</summary>
    public GateAim Aim { get; }

    /// <summary>The gate as it is, by the verdict it has: what was read decides, not what is believed.</summary>
    public GateOption Left { get; }

    private Standard Standard => _settings.Standard;

    /// <summary>The pitches of a gate that is to become something else.</summary>
    public IReadOnlyList<PredictedPitch> After(GateStories stories, GateBelief average) => [.. Stations.All.Select(station =>
    {
        StrokePoint at = _angles.Point(station);
        var pitch = new Estimate(
            average.PitchAt(at.Angle).Angle, Angle.FromDegrees(Math.Sqrt(average.PitchVariance(at.Angle))));
        double below = 1 - stories.PitchAt(at.Angle).Above(Standard.At(station).Floor.Degrees);
        return new PredictedPitch(at, pitch, below, _now.At(station).Read);
    })];

    /// <summary>How such pitches stand against the standard.</summary>
    public OptionVerdict Judge(IReadOnlyList<PredictedPitch> pitches)
    {
        bool above = pitches.All(p => _settings.Rule.Floor(p.Below) == Verdict.Good);
        bool inside = above && pitches.All(IsWithinLimits) && IsDropAllowed(pitches);
        int deviation = Aim.Deviation(pitches);
        return new(above, inside, Left.Verdict.IsInside ? Math.Max(deviation, Left.Verdict.Deviation) : deviation);
    }

    private PredictedPitch Now(Station station)
    {
        StationPitch now = _now.At(station);
        Pitch floor = Standard.At(station).Floor;
        double below = now.Read
            ? DecisionRule.Below(floor, now.Pitch.Value.Degrees, now.Pitch.U.Degrees)
            : 1 - _check.Diagnosis.At(_now.Gate, now.At.Angle).Above(floor.Degrees);
        return new(now.At, now.Pitch, below, now.Read);
    }

    private bool IsWithinLimits(PredictedPitch pitch)
    {
        StationLimits limits = Standard.At(pitch.At.Station!.Value);
        return !pitch.IsJudged || IsGood(pitch.Pitch, limits.Lowest.Degrees, limits.Highest.Degrees);
    }

    private bool IsDropAllowed(IReadOnlyList<PredictedPitch> pitches)
    {
        PredictedPitch first = pitches[(int)Station.Catch];
        PredictedPitch last = pitches[(int)Station.Finish];
        Angle drop = first.Pitch.Value - last.Pitch.Value;
        return !first.IsJudged || !last.IsJudged
            || IsGood(new(drop, Angle.Zero), double.NegativeInfinity, Standard.LargestDrop.Degrees);
    }

    /// <summary>Limits are accepted simply, so no uncertainty changes the answer.</summary>
    private bool IsGood(Estimate value, double lowest, double highest) =>
        _settings.Rule.Limits(value.Value.Degrees, value.U.Degrees, lowest, highest).Verdict == Verdict.Good;
}
