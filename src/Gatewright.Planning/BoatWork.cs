using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;

namespace Gatewright.Planning;

/// <summary>What can be done about the gates of one boat that is to be mended.</summary>
/// <param name="Check">The boat.</param>
/// <param name="Gates">Of each gate that the plan decides about, its options, the gate as it is first.</param>
/// <param name="ReadAgain">The gates that are to be read again instead, and stay out of the plan.</param>
internal sealed record BoatWork(
    BoatCheck Check, IReadOnlyList<IReadOnlyList<GateOption>> Gates, IReadOnlyList<GatePlace> ReadAgain)
{
    /// <summary>Whether a gate is below a floor, or in doubt about one, among those the plan decides about.</summary>
    public bool IsInDoubt => Gates.Any(options => !options[0].Verdict.IsAboveFloors);

    /// <summary>Gates that are to be read again beside the work, when some options have been chosen.</summary>
    public IReadOnlyList<GatePlace> ToReadAgain(IReadOnlyList<GateOption> chosen)
    {
        var range = new BoatRange(Check);
        return [.. ReadAgain
            .Concat(chosen.Where(one => chosen.Any(other => range.IsInDoubt(one, other))).Select(o => o.Gate))
            .Order()];
    }

    /// <summary>The same boat with only those options for which the shelf has the parts.</summary>
    public BoatWork Within(Stores stores) => this with
    {
        Gates = [.. Gates.Select(options => (IReadOnlyList<GateOption>)[.. options.Where(o =>
            PartCount.Of(o.Parts).All(c => c.Count <= stores.Count(c.Part)))])],
    };

    public static BoatWork Of(ShedBoat boat, PartSizes sizes, MendingSettings mending)
    {
        BoatCheck check = boat.Check;
        var settings = new OptionSettings(mending, sizes, boat.HasBackstays);
        bool hasRange = check.Verdict.Gates.Any(g => g.Reasons.Any(r => r is { Kind: ReasonKind.Range, Verdict: Verdict.Adjust }));
        ILookup<bool, GateVerdict> gates = check.Verdict.Gates.ToLookup(g => Triage.ReadsAgain(check, g));
        return new(
            check,
            [.. gates[false].Select(g => Options(check, g, hasRange, settings))],
            [.. gates[true].Select(g => g.Gate)]);
    }

    /// <summary>
    /// A gate that is good by itself is touched only where the boat's range is surely too wide, and then only when it does
    /// not read what it is meant to: to move the others to it is enough.
    /// </summary>
    private static IReadOnlyList<GateOption> Options(BoatCheck check, GateVerdict gate, bool hasRange, OptionSettings settings)
    {
        GateOption left = GateOptions.Left(check, gate.Gate);
        bool isGood = left.Verdict is { IsAboveFloors: true, IsInside: true };
        return isGood && !(hasRange && left.Verdict.Deviation > 0) ? [left] : GateOptions.For(check, gate.Gate, settings);
    }
}
