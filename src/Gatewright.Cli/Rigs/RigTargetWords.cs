using Gatewright.Core;
using Gatewright.Core.Rig;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Rigs;

/// <summary>Targets of the rig in a sentence.</summary>
internal static class RigTargetWords
{
    /// <summary>"Targets for women: span 159.3 cm, from 157.3 to 161.3; …." Those of what was measured; all where nothing was.</summary>
    public static string Of(ShedRig rig, bool inInches)
    {
        IEnumerable<RigTarget> targets = rig.Targets.All.Where(t => t.Aspect == RigAspect.Value);
        if (rig.Verdict is { } verdict)
        {
            targets = verdict.Figures.Select(f => f.Target).OfType<RigTarget>().Distinct();
        }

        string all = string.Join("; ", targets.Select(t => $"{Named(t)} {English.Rig.Target(t, UnitOf(t.Measure, inInches))}"));
        string crew = rig.Targets.Crew is { } known ? English.Rig.Crew(known) : English.Rig.AnyCrew;
        return all.Length == 0 ? $"No targets of what was measured, for {crew}." : $"Targets for {crew}: {all}. gatewright targets says where each comes from.";
    }

    /// <summary>The unit in which a measure is told.</summary>
    public static RigUnit UnitOf(RigMeasure measure, bool inInches) =>
        inInches && !measure.IsAngle() ? RigUnit.Inches : measure.Unit();

    /// <summary>"height", "height port", "height, starboard less port", "span from seat to seat"; with its seat, if it has one.</summary>
    public static string Named(RigTarget target)
    {
        string name = English.Rig.Measure(target.Measure);
        string of = target.Aspect switch
        {
            RigAspect.Sides => $"{name}, starboard less port",
            RigAspect.Seats => $"{name} from seat to seat",
            _ => target.Side is { } side ? $"{name} {side.Word()}" : name,
        };
        return target.Seat is { } seat ? FormattableString.Invariant($"{of}, seat {seat}") : of;
    }
}
