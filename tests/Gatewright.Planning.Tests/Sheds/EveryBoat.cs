using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Core.Numerics;

namespace Gatewright.Planning.Tests.Sheds;

/// <summary>Everything that can be done to one boat, nothing left out as needless, each with what it makes of the boat.</summary>
internal static class EveryBoat
{
    /// <summary>What a choice for one boat comes to.</summary>
    public sealed record Outcome(
        IReadOnlyList<GateOption> Options, bool IsAboveFloors, bool IsInside, int Deviation, IReadOnlyList<Part> Parts, int Minutes, int MadeUpFor);

    public static IReadOnlyList<Outcome> Of(BoatCheck check, PartSizes sizes)
    {
        var settings = new OptionSettings(DrawnShed.Settings.Mending, sizes);
        bool tooWide = check.Verdict.Gates.Any(g => g.Reasons.Any(r => r.Kind == ReasonKind.Range && r.Verdict == Verdict.Adjust));
        IEnumerable<IReadOnlyList<GateOption>> gates = check.Verdict.Gates
            .Where(g => !IsToBeReadAgain(check, g))
            .Select(g => CanStay(check, g, tooWide)
                ? [GateOptions.Left(check, g.Gate)]
                : GateOptions.Worthwhile(check, g.Gate, settings));
        return [.. Product([.. gates]).Select(options => Outcomes(check, options))];
    }

    /// <summary>Good by itself, and either the boat's range is not surely too wide or the gate reads what it is meant to.</summary>
    private static bool CanStay(BoatCheck check, GateVerdict gate, bool tooWide) =>
        gate.Reasons.All(r => r.Kind == ReasonKind.Range)
        && !(tooWide && GateOptions.Left(check, gate.Gate).Verdict.Deviation > 0);

    private static bool IsToBeReadAgain(BoatCheck check, GateVerdict gate)
    {
        List<Reason> own = [.. gate.Reasons.Where(r => r.Kind != ReasonKind.Range)];
        return own.Count > 0
            && own.All(r => r.Verdict == Verdict.Unsure)
            && check.Diagnosis.Gates.Single(g => g.Gate == gate.Gate).Wrong < 0.5;
    }

    private static IEnumerable<IReadOnlyList<GateOption>> Product(IReadOnlyList<IReadOnlyList<GateOption>> gates) =>
        gates.Aggregate(
            (IEnumerable<IReadOnlyList<GateOption>>)[[]],
            (chosen, options) => chosen.SelectMany(c => options.Select(o => (IReadOnlyList<GateOption>)[.. c, o])));

    private static Outcome Outcomes(BoatCheck check, IReadOnlyList<GateOption> options) => new(
        options,
        options.All(o => o.Verdict.IsAboveFloors),
        options.All(o => o.Verdict.IsInside) && Pairs(options).All(p => AreNear(check, p.One, p.Other)),
        options.Sum(o => o.Verdict.Deviation),
        [.. options.SelectMany(o => o.Parts)],
        options.Sum(o => o.Minutes),
        options.Count(o => o.MakesUpFor is not null));

    private static IEnumerable<(GateOption One, GateOption Other)> Pairs(IReadOnlyList<GateOption> options) =>
        from i in Enumerable.Range(0, options.Count)
        from j in Enumerable.Range(0, i)
        select (options[i], options[j]);

    private static bool AreNear(BoatCheck check, GateOption one, GateOption other) => Stations.All.All(station =>
    {
        PredictedPitch first = one.Pitches[(int)station];
        PredictedPitch second = other.Pitches[(int)station];
        double largest = check.Settings.Standard.LargestRange.Degrees;

        // The plan compares whole thousandths of a degree, each rounded by half of one at most.
        double apart = Math.Abs(Math.Round(first.Pitch.Value.Degrees, 3) - Math.Round(second.Pitch.Value.Degrees, 3));
        return !first.IsJudged || !second.IsJudged || apart <= largest + 1e-6
            || (one.IsLeft && other.IsLeft && !IsSurelyWider(check, one.Gate, other.Gate, station, largest));
    });

    /// <summary>As a range that was read is judged: 0.8 at least that the two are further apart.</summary>
    private static bool IsSurelyWider(BoatCheck check, GatePlace one, GatePlace other, Station station, double largest)
    {
        Estimate apart = check.Corrected.Difference(check.Corrected.IndexOf(one, station), check.Corrected.IndexOf(other, station));
        return Normal.Above((largest - Math.Abs(apart.Value.Degrees)) / apart.U.Degrees) >= 0.8;
    }
}
