using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Words;

namespace Gatewright.Journal.Exchange.Changing;

/// <summary>Turns plans, comparisons and travel sheets into documents.</summary>
public static class ChangeMapping
{
    /// <summary>A plan.</summary>
    public static ChangeDocument Of(ChangePlan plan, Wording words)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(words);
        return new(
            ChangeDocument.Name,
            plan.Rig.Name,
            plan.Target.Name,
            plan.RiggersMoved,
            [.. plan.Steps.Select(s => Step(s, words))],
            [.. plan.Unclear.Select(u => new WrittenUnclear(
                u.Place.Seat, Word(u.Place), u.Aim.Item.Word(), Rounded.Figure(u.Aim.Value), Figure(u.Now), u.Why switch
                {
                    UnclearWhy.NotMeasured => "not-measured",
                    UnclearWhy.CannotTell => "cannot-tell",
                    _ => "no-part",
                }))],
            [.. plan.ReadAgain.Select(r => new WrittenItem(r.Place.Seat, Word(r.Place), r.Item.Word()))],
            [.. plan.Parts.Select(Part)],
            [.. plan.Missing.Select(Part)]);
    }

    /// <summary>A comparison.</summary>
    public static CompareDocument Of(RigComparison compared)
    {
        ArgumentNullException.ThrowIfNull(compared);
        return new(
            CompareDocument.Name,
            compared.First.Name,
            compared.Second.Name,
            [.. compared.Items.Select(i => new WrittenCompared(
                i.Place.Seat,
                Word(i.Place),
                i.Item.Word(),
                Figure(i.First?.Value),
                Figure(i.Second?.Value),
                Figure(i.Difference),
                i.Probability is { } p ? Rounded.Probability(p) : null,
                i.As switch
                {
                    ComparedAs.Differs => "differs",
                    ComparedAs.Alike => "alike",
                    ComparedAs.Untold => "untold",
                    ComparedAs.OneSided => "one-sided",
                    _ => "not-taken-since",
                }))],
            [.. compared.Marks.Select(m => new WrittenMark(m.IsOar ? "oar" : "rigger", m.At.Seat, m.At.Side.Word(), m.First, m.Second))]);
    }

    /// <summary>A travel sheet.</summary>
    public static TravelDocument Of(TravelSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new(
            TravelDocument.Name,
            sheet.Rig.Name,
            [.. sheet.Off.Select(r => new WrittenRigger(r.Gate.Seat, r.Gate.Side.Word(), r.Mark))],
            [.. sheet.Check.Select(c => new WrittenQuick(c.Place.Seat, Word(c.Place), c.Item.Word(), Figure(c.Expected), c.Floor is { } floor ? Rounded.Figure(floor) : null, Figure(c.Before)))]);
    }

    private static WrittenStep Step(ChangeStep step, Wording words) => new(
        step.Phase.Word(),
        step.Place.Seat,
        Word(step.Place),
        step.Item?.Word(),
        step.Mark,
        Figure(step.Before),
        Figure(step.After),
        [.. PartCount.Of(step.Parts).Select(Part)],
        [.. step.Effects.Select(e => new WrittenEffect(
            e.Of switch
            {
                EffectOf.Overlap => "overlap",
                EffectOf.Gearing => "gearing",
                EffectOf.PitchCatch => "pitch-catch",
                EffectOf.PitchAbeam => "pitch-abeam",
                _ => "pitch-finish",
            },
            Rounded.Figure(e.Before),
            Rounded.Figure(e.After)))],
        words.Changes.Step(step),
        words.Cautions.Each(step.Cautions));

    private static string? Word(RigPlace place) => place.Side?.Word();

    private static WrittenFigure? Figure(RigEstimate? figure) =>
        figure is { } known ? new(Rounded.Figure(known.Value), Rounded.Figure(known.U)) : null;

    private static WrittenPart Part(PartCount count) => new(count.Part.Kind.Word(), Rounded.Figure(count.Part.Size), count.Count);
}
