using Gatewright.Core;
using Gatewright.Core.Rig;

namespace Gatewright.Words.TheRig;

/// <summary>What is said of the rig: its measures, how each is taken, its targets, and why one is not good.</summary>
public sealed class RigWords
{
    private const int MostDigits = 3;

    private readonly Wording _say;

    internal RigWords(Wording say) => _say = say;

    /// <summary>"spread", "oar length".</summary>
    public string Measure(RigMeasure measure) => _say.Text($"Rig.Measure.{measure}");

    /// <summary>How a measure is taken, in one line.</summary>
    public string How(RigMeasure measure) => _say.Text($"Rig.How.{measure}");

    /// <summary>How sure one figure taken once is: "usually ± 0.29 cm (standard uncertainty; ours)".</summary>
    public string Usual(RigMeasure measure) =>
        _say.Text("Rig.Usual", _say.Figures.Fixed(RigErrors.Usual(measure).Once, 2) + Behind(measure.Unit()));

    /// <summary>"novices", "women".</summary>
    public string Crew(Crew crew) => _say.Text($"Rig.Crew.{crew}");

    /// <summary>What a boat that is set for a crew is set to: "the targets for women".</summary>
    public string TargetsFor(Crew crew) => _say.Text("Rig.TargetsFor", Crew(crew));

    /// <summary>Of whom nobody has said that they row it: "women and men".</summary>
    public string AnyCrew => _say.Text("Rig.Crew.Any");

    /// <summary>Where a target comes from: "World Championships 2017, rigging survey; tolerance by Gatewright's judgement".</summary>
    public string Source(RigSource source) => Sources([source]);

    /// <summary>Where the targets of a boat come from, each source once, and once what is judgement in them; empty for no source.</summary>
    public string Sources(IReadOnlyCollection<RigSource> sources)
    {
        ArgumentNullException.ThrowIfNull(sources);
        string judged = Named(sources.Where(HasJudgedTolerance));
        if (judged.Length == 0)
        {
            return Named(sources);
        }

        string key = sources.Contains(RigSource.Ours) ? "Rig.Judgement.ToleranceAndTargets" : "Rig.Judgement.Tolerance";
        string others = Named(sources.Where(s => s != RigSource.Ours && !HasJudgedTolerance(s)));
        return others.Length == 0 ? _say.Text(key, judged) : $"{_say.Text(key, judged)}; {others}";
    }

    /// <summary>A kind of reason in a few words: "above the limit".</summary>
    public string Reason(RigReasonKind kind) => _say.Text($"Rig.Kind.{kind}");

    /// <summary>"seat 3", "seat 3 port".</summary>
    public string Place(RigPlace place) => place.Side is { } side
        ? _say.Names.Gate(new GatePlace(place.Seat, side))
        : _say.Text("Place.Seat", place.Seat);

    /// <summary>A unit behind a figure: "cm", "in", "°".</summary>
    public static string Sign(RigUnit unit) => unit == RigUnit.Degrees ? "°" : unit.Word();

    /// <summary>Where a figure comes from that was set and not taken since.</summary>
    public string FromSetting(DateOnly day) => _say.Text("Rig.From.Set", _say.Language.Day(day));

    /// <summary>Where a figure comes from that was read of an oar by itself: "from oar 3 of the set Blue, read on 2026-05-04".</summary>
    public string FromOar(string oar, string? set, DateOnly day) => set is null
        ? _say.Text("Rig.From.Oar", oar, _say.Language.Day(day))
        : _say.Text("Rig.From.OarOfSet", oar, set, _say.Language.Day(day));

    /// <summary>"86.5 cm", "42.0°".</summary>
    public string Figure(double value, RigUnit unit) => Digits(value, unit, 0) + Behind(unit);

    /// <summary>"86.5", where the unit has been said.</summary>
    public string Bare(double value, RigUnit unit) => Digits(value, unit, 0);

    /// <summary>"86.5 ± 0.3 cm".</summary>
    public string Figure(RigEstimate figure, RigUnit unit) => Figure(figure, unit, null);

    /// <summary>What a target asks for: "86 cm, from 84.5 to 87.5", from seat to seat "at most 1 cm". A ± beside it would be an uncertainty.</summary>
    public string Target(RigTarget target, RigUnit unit)
    {
        ArgumentNullException.ThrowIfNull(target);
        return target.Aspect == RigAspect.Seats
            ? _say.Text("Rig.Target.Seats", Brief(target.Tolerance, unit) + Behind(unit))
            : _say.Text(
                "Rig.Target.Value",
                Brief(target.Value, unit) + Behind(unit),
                Brief(target.Value - target.Tolerance, unit),
                Brief(target.Value + target.Tolerance, unit));
    }

    /// <summary>From where to where a target lets a figure lie, in a narrow column that says the unit: "84.5–87.5".</summary>
    public string Range(RigTarget target)
    {
        ArgumentNullException.ThrowIfNull(target);
        RigUnit own = target.Measure.Unit();
        return $"{Brief(target.Value - target.Tolerance, own)}–{Brief(target.Value + target.Tolerance, own)}";
    }

    /// <summary>What a verdict on a rig says nothing of, and what comes before it.</summary>
    public string Precedence => _say.Text("Sentence.Two", _say.Text("Rig.Precedence"), _say.Cautions.Of(Core.Mending.Caution.Defer));

    /// <summary>Why a rig is not good, a sentence each: what is laid to both ends of a difference is said once.</summary>
    public IEnumerable<string> Why(RigVerdict verdict, bool inInches = false)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return verdict.Figures.SelectMany(f => f.Reasons).Select(reason => Of(reason, inInches)).Distinct();
    }

    /// <summary>Why a figure is not good, with the numbers.</summary>
    /// <example>Seat 2: span 161.7 ± 0.2 cm, above 161.3 cm (target 159.3 cm, from 157.3 to 161.3; chance that it is outside: 97 %).</example>
    public string Of(RigReason reason) => Of(reason, inInches: false);

    /// <summary>The same, lengths in inches where they are asked for.</summary>
    public string Of(RigReason reason, bool inInches)
    {
        ArgumentNullException.ThrowIfNull(reason);
        RigUnit unit = inInches && !reason.Measure.IsAngle() ? RigUnit.Inches : reason.Measure.Unit();
        (RigPlace at, RigPlace? to) = reason.Other is { } other && other < reason.Place ? (other, reason.Place) : (reason.Place, reason.Other);
        string place = Sentence.Capital(Place(at));
        string measure = Measure(reason.Measure);
        string figure = Figure(reason.Value, unit, reason.Limit);
        string limit = Brief(reason.Limit, unit) + Behind(unit);
        string target = reason.Target is { } known ? Target(known, unit) : string.Empty;
        string chance = _say.Figures.Percent(reason.Probability);
        string sentence = reason.Kind switch
        {
            RigReasonKind.Repeats => _say.Text("Rig.Reason.Repeats", place, measure, figure, Figure(reason.Limit, unit)),
            RigReasonKind.NotTakenSince => _say.Text("Rig.Reason.NotTakenSince", place, measure, figure),
            RigReasonKind.Sides => _say.Text("Rig.Reason.Sides", Seat(reason.Place), measure, figure, target, chance),
            RigReasonKind.Seats => _say.Text("Rig.Reason.Seats", place, to is { } end ? Place(end) : string.Empty, measure, figure, limit, chance),
            RigReasonKind.AboveLimit => _say.Text("Rig.Reason.AboveLimit", place, measure, figure, limit, target, chance),
            _ => _say.Text("Rig.Reason.BelowLimit", place, measure, figure, limit, target, chance),
        };
        return reason.Kind is not (RigReasonKind.Repeats or RigReasonKind.NotTakenSince) && reason.Verdict == Core.Judging.Verdict.Unsure
            ? _say.Text("Sentence.Two", sentence, _say.Text("Reason.TooClose"))
            : sentence;
    }

    /// <summary>A survey tells what is usual and a definition what follows, and neither how far a boat may be off it.</summary>
    private static bool HasJudgedTolerance(RigSource source) => source is RigSource.Survey or RigSource.Computed;

    private string Named(IEnumerable<RigSource> sources) =>
        string.Join("; ", sources.Distinct().Order().Select(s => _say.Text($"Rig.Source.{s}")));

    private string Brief(double own, RigUnit unit) => _say.Figures.Brief(unit.FromOwn(own));

    private string Seat(RigPlace place) => Sentence.Capital(_say.Text("Place.Seat", place.Seat));

    private static string Behind(RigUnit unit) => unit == RigUnit.Degrees ? "°" : " " + unit.Word();

    /// <summary>As many decimals as keep the value on its side of a limit, and something of its uncertainty.</summary>
    private string Figure(RigEstimate figure, RigUnit unit, double? limit)
    {
        (double value, double u, double? at) = (unit.FromOwn(figure.Value), unit.FromOwn(figure.U), limit is { } own ? unit.FromOwn(own) : null);
        int more = 0;
        while (First(unit) + more < MostDigits
            && ((at is { } edge && Rounded(value).CompareTo(edge) != value.CompareTo(edge)) || (u > 0 && Rounded(u) == 0)))
        {
            more++;
        }

        return _say.Text("Figure.Bare", Digits(figure.Value, unit, more), Digits(figure.U, unit, more)) + Behind(unit);

        double Rounded(double x) => Math.Round(x, First(unit) + more, MidpointRounding.AwayFromZero);
    }

    private string Digits(double own, RigUnit unit, int more) => _say.Figures.Degrees(unit.FromOwn(own), First(unit) + more);

    /// <summary>Decimals that are shown: a millimetre, a tenth of a degree, a hundredth of an inch.</summary>
    private static int First(RigUnit unit) => unit switch { RigUnit.Millimetres => 0, RigUnit.Inches => 2, _ => 1 };
}
