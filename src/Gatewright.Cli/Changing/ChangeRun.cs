using Gatewright.Cli.Terminals;
using Gatewright.Core.Changing;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange.Changing;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Changing;

/// <summary>The rig to come to: one of these.</summary>
/// <param name="Kept">One that the club keeps under a name.</param>
/// <param name="Boat">Another boat's.</param>
/// <param name="Day">The boat's own on a day.</param>
/// <param name="Crew">A crew's.</param>
/// <param name="MayExchange">Whether riggers may go to other seats.</param>
internal sealed record Wanted(string? Kept, string? Boat, DateOnly? Day, Crew? Crew, bool MayExchange);

/// <summary>Plans a change and tells it.</summary>
internal static class ChangeRun
{
    /// <summary>The plan; null where what was asked for cannot be.</summary>
    public static ChangePlan? Plan(KnownRigs rigs, string? boat, Wanted wanted) =>
        rigs.Find("--boat", boat, null) is { } rig && Target(rigs, rig, boat ?? rig.Name, wanted) is { } target
            ? ChangePlan.Of(rig, target, ChangeSettings.Default with { Stores = rigs.Stores, MayExchangeRiggers = wanted.MayExchange })
            : null;

    /// <summary>The plan, told; null where what was asked for cannot be.</summary>
    public static Told? Told(KnownRigs rigs, string? boat, Wanted wanted)
    {
        if (Plan(rigs, boat, wanted) is not { } plan)
        {
            return null;
        }

        bool isDone = plan.Steps.Count == 0 && plan.Unclear.Count == 0;
        return new(ChangeJson.Text(ChangeMapping.Of(plan, English)), [.. Lines(plan)], isDone ? ExitStatus.Good : ExitStatus.Attention);
    }

    private static TargetRig? Target(KnownRigs rigs, RigOfBoat rig, string boat, Wanted wanted)
    {
        if (wanted.Kept is { } name)
        {
            return rigs.Kept(name, rig, boat);
        }

        if (wanted.Crew is { } crew)
        {
            return rigs.ForCrew(crew, rig, boat);
        }

        bool isSame = wanted.Boat is null;
        if (rigs.Find(isSame ? "--to-day" : "--to-boat", wanted.Boat ?? boat, wanted.Day) is not { } other)
        {
            return null;
        }

        if (other.Class.Rowing != rig.Class.Rowing || other.Class.Seats != rig.Class.Seats)
        {
            rigs.Refuse("--to-boat", wanted.Boat, $"is a {other.Class}, and {rig.Name} a {rig.Class}: they have no rig in common.");
            return null;
        }

        return TargetRig.Like(other, isSame);
    }

    private static IEnumerable<string> Lines(ChangePlan plan)
    {
        yield return English.Changes.Head(plan);
        ChangePhase? phase = null;
        int number = 0;
        foreach (ChangeStep step in plan.Steps)
        {
            if (step.Phase != phase)
            {
                phase = step.Phase;
                yield return string.Empty;
                yield return $"{English.Changes.Phase(step.Phase)}. {English.Changes.Why(step.Phase)}";
            }

            number++;
            string follows = English.Changes.Follows(step) is { } told ? " " + told : string.Empty;
            yield return FormattableString.Invariant($"{number}. {English.Changes.Step(step)}{follows}");
        }

        IReadOnlyList<string> parts = English.Changes.Parts(plan);
        if (parts.Count > 0)
        {
            yield return string.Empty;
        }

        foreach (string part in parts)
        {
            yield return part;
        }

        if (plan.Unclear.Count > 0)
        {
            yield return string.Empty;
            yield return English.Changes.MeasureFirstHead;
            foreach (string unclear in English.Changes.Unclear(plan))
            {
                yield return unclear;
            }
        }

        if (plan.ReadAgain.Count > 0)
        {
            yield return string.Empty;
            yield return English.Changes.ReadAgainHead;
            foreach (string again in English.Changes.ReadAgain(plan))
            {
                yield return Words.Sentence.Capital(again) + ".";
            }
        }

        yield return string.Empty;
        foreach (string caution in English.Cautions.Each(plan.Steps.SelectMany(s => s.Cautions).Where(c => c != Caution.Defer).Append(Caution.Defer)))
        {
            yield return caution;
        }
    }
}
