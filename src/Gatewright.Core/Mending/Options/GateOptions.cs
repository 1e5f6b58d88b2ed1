using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending.Options;

/// <summary>Everything that can be done about a gate, as a list to choose from.</summary>
/// <remarks>
/// Left as it is; or an insert of any size that can be had, a pack of shims under one edge of the pin's foot, a pack of
/// washers behind one bolt of the rigger's plate, the backstay where there is one, a new pin where one is likely enough to be bent; or an insert together
/// with one of those. A pin is not straightened here, nor a rigger bent back: that is a decision at the bench.
/// </remarks>
public sealed class GateOptions
{
    private readonly BoatCheck _check;
    private readonly GatePlace _gate;
    private readonly OptionSettings _settings;
    private readonly OptionJudge _judge;
    private readonly GateStories _stories;
    private readonly Cause? _likeliest;
    private readonly double _pinIsBent;

    private GateOptions(BoatCheck check, GatePlace gate, OptionSettings settings)
    {
        (_check, _gate, _settings) = (check, gate, settings);
        _judge = new(check, gate);
        _stories = GateStories.Of(check.Diagnosis, gate);
        IReadOnlyList<CauseProbability> causes = check.Diagnosis.Gates.Single(g => g.Gate == gate).Causes;
        _likeliest = causes[0].Cause;
        _pinIsBent = causes.Where(c => c.Cause is Cause.PinAft or Cause.PinOut).Sum(c => c.Probability);
    }

    /// <summary>The gate as it is.</summary>
    /// <exception cref="ArgumentException">Nothing was read of the gate.</exception>
    public static GateOption Left(BoatCheck check, GatePlace gate)
    {
        ThrowIfNotRead(check, gate);
        return new OptionJudge(check, gate).Left;
    }

    /// <summary>
    /// What is worth doing about a gate, the gate as it is first; nothing is on the list that another thing on it does as
    /// well with no other parts and in no more time (<see cref="OptionDominance"/>).
    /// </summary>
    /// <exception cref="ArgumentException">Nothing was read of the gate.</exception>
    public static IReadOnlyList<GateOption> For(BoatCheck check, GatePlace gate, OptionSettings settings) =>
        new OptionDominance(check.Settings.Standard).Undominated(Worthwhile(check, gate, settings));

    /// <summary>
    /// What is worth doing about a gate, the gate as it is first: what brings it inside, or clear of a floor it was not
    /// clear of. Work that leaves a gate where it has to be mended again is not worth a spanner.
    /// </summary>
    /// <exception cref="ArgumentException">Nothing was read of the gate.</exception>
    public static IReadOnlyList<GateOption> Worthwhile(BoatCheck check, GatePlace gate, OptionSettings settings)
    {
        IReadOnlyList<GateOption> all = All(check, gate, settings);
        bool isAboveFloors = all[0].Verdict.IsAboveFloors;
        return [.. all.Where(o => o.IsLeft || o.Verdict.IsInside || (o.Verdict.IsAboveFloors && !isAboveFloors))];
    }

    /// <summary>All that can be done about a gate, whether it helps or not, the gate as it is first.</summary>
    /// <exception cref="ArgumentException">Nothing was read of the gate.</exception>
    public static IReadOnlyList<GateOption> All(BoatCheck check, GatePlace gate, OptionSettings settings)
    {
        ThrowIfNotRead(check, gate);
        ArgumentNullException.ThrowIfNull(settings);
        var options = new GateOptions(check, gate, settings);
        return [options._judge.Left, .. options.Steps().Select(options.Option)];
    }

    private static void ThrowIfNotRead(BoatCheck check, GatePlace gate)
    {
        ArgumentNullException.ThrowIfNull(check);
        if (!check.Verdict.Gates.Any(g => g.Gate == gate))
        {
            throw new ArgumentException($"Nothing was read of {gate}.", nameof(gate));
        }
    }

    private IEnumerable<IReadOnlyList<MendingStep>> Steps()
    {
        List<MendingStep> tilts = [.. Tilts()];
        foreach (MendingStep tilt in tilts.Concat(Backstay(_stories)))
        {
            yield return [tilt];
        }

        foreach (double size in _settings.Sizes.Inserts)
        {
            var insert = new InsertStep(size, _settings.Mending.InsertU.Degrees);
            yield return [insert];
            foreach (MendingStep tilt in tilts.Concat(Backstay(_stories.After(insert))))
            {
                yield return [tilt, insert];
            }
        }
    }

    private IEnumerable<MendingStep> Tilts()
    {
        foreach (TiltWay way in TiltWays.All)
        {
            foreach (ShimPack pack in ShimPack.All(way.IsAtThePlate() ? _settings.Sizes.Washers : _settings.Sizes.Shims))
            {
                yield return new PackStep(way, pack, _settings.Mending);
            }
        }

        if (_pinIsBent >= Remedies.LikelyEnough)
        {
            yield return new NewPinStep(_judge.Aim.Target.Pin, _settings.Mending.NewPinU.Degrees);
        }
    }

    /// <summary>A stay goes to any length, so one length is worth trying: that of least squares against the aim.</summary>
    private IEnumerable<MendingStep> Backstay(GateStories stories)
    {
        if (!_settings.HasBackstays)
        {
            yield break;
        }

        StationAngles angles = _check.Settings.Diagnosing.Measuring.Angles(_check.Readings.Class.Rowing);
        GateBelief average = stories.Average();
        double product = 0;
        double square = 0;
        foreach (Station station in Stations.All)
        {
            double slope = Geometry.PitchSlopes.At(angles.At(station), _gate.Side, Lie.Upright).Aft;
            product += slope * (_judge.Aim.DegreesAt(station) - average.PitchAt(angles.At(station)).Degrees);
            square += slope * slope;
        }

        if (BackstayStep.ToTilt(product / square, _settings.Mending) is { } step)
        {
            yield return step;
        }
    }

    private GateOption Option(IReadOnlyList<MendingStep> steps)
    {
        GateStories after = steps.Aggregate(_stories, (stories, step) => stories.After(step));
        GateBelief average = after.Average();
        IReadOnlyList<PredictedPitch> pitches = _judge.After(after, average);
        return new(_gate, steps, pitches, _judge.Judge(pitches))
        {
            After = average,
            MakesUpFor = _likeliest is { } cause && !steps.Any(s => s.Mends(cause)) ? cause : null,
        };
    }
}
