using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Rigging;

namespace Gatewright.Cli.Rigs;

/// <summary>A boat's rig, judged.</summary>
/// <param name="Boat">The boat's name.</param>
/// <param name="Targets">What it is judged by.</param>
/// <param name="Verdict">How it is judged; null where nothing of it was measured.</param>
/// <param name="Written">The same for programs.</param>
internal sealed record ShedRig(string Boat, RigTargets Targets, RigVerdict? Verdict, CheckedRig Written)
{
    /// <summary>Whether something of it is out, or cannot be told.</summary>
    public bool NeedsAttention => Verdict is { Verdict: not Core.Judging.Verdict.Good };

    /// <summary>The rigs that a file has.</summary>
    /// <param name="file">The file.</param>
    /// <param name="crew">Who rows the boats; null for the targets of women and men together.</param>
    public static IEnumerable<ShedRig> Of(ReadingsInput file, Crew? crew)
    {
        foreach (BoatMeasures boat in file.Measures)
        {
            RigVerdict verdict = RigJudge.Of(boat.Readings, RigTargets.Starting(boat.Class, crew));
            yield return new(boat.Boat, verdict.Targets, verdict, RigMapping.Of(boat.Boat, verdict, boat.Readings));
        }
    }

    /// <summary>The rig of a club's boat; null while its class is not known.</summary>
    public static ShedRig? Of(string title, BoatRig rig) =>
        rig.View.Targets is { } targets && RigMapping.Of(title, rig, saysWho: true) is { } written
            ? new(title, targets, rig.Verdict, written)
            : null;
}
