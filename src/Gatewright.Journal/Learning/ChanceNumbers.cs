using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Learning;

/// <summary>Every number of the table of chances, in the order in which it is shown.</summary>
public static class ChanceNumbers
{
    /// <summary>How often each cause is met, before anything is read.</summary>
    public static IReadOnlyList<ChanceNumber> Chances { get; } =
    [
        Chance("gatePitch", "a gate has a wrong or worn insert", c => c.GatePitch, (c, n) => c with { GatePitch = n }),
        Chance("pinAft", "a gate's pin leans fore or aft", c => c.PinAft, (c, n) => c with { PinAft = n }),
        Chance("pinOut", "a gate's pin leans out or in", c => c.PinOut, (c, n) => c with { PinOut = n }),
        Chance("rigger", "a gate's rigger is knocked or mounted wrong", c => c.Rigger, (c, n) => c with { Rigger = n }),
        Chance("wrongSeat", "a refitted rigger stands on another's place", c => c.WrongSeat, (c, n) => c with { WrongSeat = n }),
        Chance("sleeve", "the sleeve of an oar that was read has slipped", c => c.Sleeve, (c, n) => c with { Sleeve = n }),
        Chance("hullLevel", "a boat does not lie as was thought", c => c.HullLevel, (c, n) => c with { HullLevel = n }),
        Chance("gaugeZero", "a gauge is off its zero", c => c.GaugeZero, (c, n) => c with { GaugeZero = n }),
    ];

    /// <summary>How much the start weighs against a club's own jobs.</summary>
    public static IReadOnlyList<ChanceNumber> Weights { get; } =
    [
        Weight("gates", "as how many gates checked the chances of gates count", c => c.GatesBehind, (c, n) => c with { GatesBehind = n }),
        Weight("oars", "as how many oars the sleeve's chance counts", c => c.OarsBehind, (c, n) => c with { OarsBehind = n }),
        Weight("boats", "as how many levels the level's chance counts", c => c.BoatsBehind, (c, n) => c with { BoatsBehind = n }),
        Weight("gauges", "as how many gauges the zero's chance counts", c => c.GaugesBehind, (c, n) => c with { GaugesBehind = n }),
    ];

    /// <summary>How likely each report is.</summary>
    public static IReadOnlyList<ChanceNumber> Reports { get; } =
    [
        Report("knock.base", "a knock is told of a gate with nothing or another thing wrong", r => r.KnockBase, (r, n) => r with { KnockBase = n }),
        Report("knock.rigger", "a knock is told of a gate whose rigger is out", r => r.KnockIfRigger, (r, n) => r with { KnockIfRigger = n }),
        Report("knock.pin", "a knock is told of a gate whose pin leans one way", r => r.KnockIfPin, (r, n) => r with { KnockIfPin = n }),
        Report("refitted.base", "a refit is told of a gate with nothing or another thing wrong", r => r.RefittedBase, (r, n) => r with { RefittedBase = n }),
        Report("refitted.rigger", "a refit is told of a gate whose rigger is out", r => r.RefittedIfRigger, (r, n) => r with { RefittedIfRigger = n }),
        Report("refitted.pin", "a refit is told of a gate whose pin leans one way", r => r.RefittedIfPin, (r, n) => r with { RefittedIfPin = n }),
        .. Curve("crabEarly", "a crab early in the drive", "the pitch at the catch", "below", r => r.CrabEarly, (r, c) => r with { CrabEarly = c }),
        .. Curve("crabAtFinish", "a crab at the finish", "the pitch at the finish", "below", r => r.CrabAtFinish, (r, c) => r with { CrabAtFinish = c }),
        .. Curve("washesOut", "a blade that washes out", "the pitch abeam", "above", r => r.WashesOut, (r, c) => r with { WashesOut = c }),
        .. Curve("downToOneSide", "a boat down to one side", "the mean pitch abeam that this side has less", "above", r => r.DownToOneSide, (r, c) => r with { DownToOneSide = c }),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ChanceNumber> All { get; } = [.. Chances, .. Weights, .. Reports];

    private static ChanceNumber Chance(string key, string meaning, Func<PriorChances, double> get, Func<PriorChances, double, PriorChances> with) =>
        new($"chances.{key}", meaning, NumberRange.Chance, t => get(t.Before), (t, n) => t with { Before = with(t.Before, n) });

    private static ChanceNumber Weight(string key, string meaning, Func<PriorChances, double> get, Func<PriorChances, double, PriorChances> with) =>
        new($"weights.{key}", meaning, NumberRange.Weight, t => get(t.Before), (t, n) => t with { Before = with(t.Before, n) });

    private static ChanceNumber Report(
        string key, string meaning, Func<ReportLikelihoods, double> get, Func<ReportLikelihoods, double, ReportLikelihoods> with, NumberRange? range = null) =>
        new($"reports.{key}", meaning, range ?? NumberRange.Likelihood, t => get(t.Reports), (t, n) => t with { Reports = with(t.Reports, n) });

    private static IEnumerable<ChanceNumber> Curve(
        string key, string what, string follows, string trouble, Func<ReportLikelihoods, ReportCurve> get, Func<ReportLikelihoods, ReportCurve, ReportLikelihoods> with) =>
    [
        Report($"{key}.threshold", $"{what}: half-way up where {follows} is this", r => get(r).ThresholdDegrees, (r, n) => with(r, get(r) with { ThresholdDegrees = n }), NumberRange.Threshold),
        Report($"{key}.width", $"{what}: the standard deviation of the rise", r => get(r).WidthDegrees, (r, n) => with(r, get(r) with { WidthDegrees = n }), NumberRange.Width),
        Report($"{key}.base", $"{what}: told when all is well", r => get(r).Base, (r, n) => with(r, get(r) with { Base = n })),
        Report($"{key}.peak", $"{what}: told when far {trouble} the threshold", r => get(r).Peak, (r, n) => with(r, get(r) with { Peak = n })),
    ];
}
