using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Journal.Exchange.Gearings;

/// <summary>A seat's gearing for programs; docs/gearing-format.md describes it. Centimetres, degrees, ratios; to 4 decimals.</summary>
public sealed record GearingDocument(
    string Format,
    string? Boat,
    int Seat,
    string Rowing,
    IReadOnlyList<GearingMeasure> Rig,
    IReadOnlyList<GearingFigure> Figures,
    GearingChange? Change,
    GearingWish? Wish);

/// <summary>A measure; assumed where nobody took it.</summary>
public sealed record GearingMeasure(string Measure, double Value, double U, bool Assumed);

/// <summary>A figure with its standard uncertainty.</summary>
public sealed record GearingFigure(string Figure, double Value, double U);

/// <summary>What steps do, each alone and together; the interaction is what together exceeds the sum by.</summary>
public sealed record GearingChange(IReadOnlyList<GearingEffect> Alone, GearingEffect Together, IReadOnlyDictionary<string, double> Interaction);

/// <summary>What some steps do.</summary>
public sealed record GearingEffect(IReadOnlyList<GearingStep> Steps, IReadOnlyList<GearingEffectFigure> Figures);

/// <summary>One measure set by so many centimetres.</summary>
public sealed record GearingStep(string Measure, double By);

/// <summary>What becomes of a figure; u is that of the difference.</summary>
public sealed record GearingEffectFigure(string Figure, double Before, double After, double By, double U);

/// <summary>What was wanted and the ways to it; reachable for a single wish; nearest, null where a way meets it.</summary>
public sealed record GearingWish(
    IReadOnlyDictionary<string, double> Wanted, IReadOnlyList<GearingAnswer> Answers, IReadOnlyList<double>? Reachable,
    GearingNearest? Nearest);

/// <summary>How near one comes, and the bounds that stop one there.</summary>
public sealed record GearingNearest(GearingAnswer Answer, IReadOnlyList<GearingBound> StoppedBy);

/// <summary>A measure that may go no further than a bound, its least or its most.</summary>
public sealed record GearingBound(string Measure, double Bound, bool IsMost);

/// <summary>A way: what to set, the minutes at one seat, and every figure after it.</summary>
public sealed record GearingAnswer(IReadOnlyList<GearingStep> Steps, int Minutes, IReadOnlyDictionary<string, double> Figures);

/// <summary>Writes the document.</summary>
public static class GearingJson
{
    /// <summary>The seat as JSON text, without a line end.</summary>
    public static string Of(GearingTold told)
    {
        ArgumentNullException.ThrowIfNull(told);
        MeasuredSeat seat = told.Stroke.Seat;
        RigMeasure[] measures = SeatRig.Measures(seat.Rig.Rowing);
        return JsonSerializer.Serialize(
            new GearingDocument(
                "gatewright.gearing/1",
                told.Boat,
                told.SeatNumber,
                seat.Rig.Rowing == Rowing.Sweep ? "sweep" : "scull",
                [.. measures.Select((m, i) => new GearingMeasure(m.Word(), Four(seat.Rig.Get(m).Centimetres), Four(seat.Covariance.U(i)), seat.Assumed.Contains(m)))],
                [.. StrokeFigures.All.Select(f => new GearingFigure(f.Word(), Four(told.Stroke[f].Value), Four(told.Stroke[f].U)))],
                told.Change is { } change ? Change(change) : null,
                told.Found is { } found ? Wish(told.Wishes, found, told.Nearest) : null),
            GearingJsonContext.Default.GearingDocument);
    }

    private static GearingChange Change(StrokeChange change) => new(
        [.. change.Alone.Select(Effect)],
        Effect(change.Together),
        StrokeFigures.All.ToDictionary(f => f.Word(), f => Four(change.Interaction(f))));

    private static GearingEffect Effect(StrokeEffect effect) => new(
        Steps(effect.Steps),
        [.. effect.Figures.Select(f => new GearingEffectFigure(f.Figure.Word(), Four(f.Before), Four(f.After), Four(f.By), Four(f.U)))]);

    private static GearingWish Wish(IReadOnlyList<StrokeWish> wishes, WishFound found, NearestRig? nearest) => new(
        wishes.GroupBy(w => w.Figure).ToDictionary(w => w.Key.Word(), w => Four(w.Last().Value)),
        [.. found.Answers.Select(Answer)],
        found.Reachable is { } range ? [Four(range.Least), Four(range.Most)] : null,
        nearest is null ? null : new(
            Answer(nearest.Nearest),
            [.. nearest.Stopping.Select(s => new GearingBound(s.Measure.Word(), Four(s.Bound.Centimetres), s.IsMost))]));

    private static GearingAnswer Answer(WishAnswer answer) =>
        new(Steps(answer.Steps), answer.Minutes, StrokeFigures.All.ToDictionary(f => f.Word(), f => Four(answer.After[f])));

    private static IReadOnlyList<GearingStep> Steps(IReadOnlyList<RigStep> steps) =>
        [.. steps.Select(s => new GearingStep(s.Measure.Word(), Four(s.By.Centimetres)))];

    /// <summary>Adding 0 turns −0 into 0.</summary>
    private static double Four(double value) => Math.Round(value, 4, MidpointRounding.AwayFromZero) + 0.0;
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, NewLine = "\n")]
[JsonSerializable(typeof(GearingDocument))]
internal sealed partial class GearingJsonContext : JsonSerializerContext;
