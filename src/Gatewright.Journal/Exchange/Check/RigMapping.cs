using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Journal.Rigging;
using Gatewright.Words;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>Turns judged rigs into the document.</summary>
public static class RigMapping
{
    /// <summary>The rig that a file has.</summary>
    /// <param name="boat">The boat's name.</param>
    /// <param name="verdict">How it was judged.</param>
    /// <param name="readings">What it was judged from.</param>
    public static CheckedRig Of(string boat, RigVerdict verdict, IReadOnlyList<RigReading> readings)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return Of(boat, verdict.Targets, verdict, figure => new(
            readings.Where(r => r.Measure == figure.Measure && r.Place == figure.Place).Select(r => r.Day).Max(), figure.IsComputed ? null : "taken"));
    }

    /// <summary>The rig of a club's boat; null while its class is not known.</summary>
    /// <param name="boat">What the boat is called.</param>
    /// <param name="rig">How its rig stands.</param>
    /// <param name="saysWho">Whether who took each figure is said.</param>
    public static CheckedRig? Of(string boat, BoatRig rig, bool saysWho)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig.View.Targets is not { } targets ? null : Of(boat, targets, rig.Verdict, figure => Origin(rig.View, figure, saysWho));
    }

    private static FigureOrigin Origin(RigView rig, RigFigure figure, bool saysWho) => rig.Other(figure.Measure, figure.Place) is { } other
        ? new(other.Day, other.Oar is null ? "set" : "oar", other.Oar?.Name, saysWho ? other.Record.Entry.Member : null)
        : rig.History(figure.Measure, figure.Place) is [{ } last, ..]
            ? new(last.Day, "taken", Member: saysWho ? last.Record.Entry.Member : null)
            : default;

    /// <summary>A target as written.</summary>
    public static CheckedTarget Of(RigTarget target)
    {
        ArgumentNullException.ThrowIfNull(target);
        return new(
            target.Measure.Word(),
            target.Aspect switch { RigAspect.Value => "value", RigAspect.Sides => "sides", _ => "seats" },
            target.Seat,
            target.Side?.Word(),
            Rounded.Figure(target.Value),
            Rounded.Figure(target.Tolerance),
            target.Source switch
            {
                RigSource.Survey => "survey",
                RigSource.ClubGuides => "club-guides",
                RigSource.Ours => "ours",
                RigSource.Computed => "computed",
                RigSource.Club => "club",
                _ => "boat",
            });
    }

    private static CheckedRig Of(
        string boat, RigTargets targets, RigVerdict? verdict, Func<RigFigure, FigureOrigin> origin) => new(
            boat,
            targets.Class.Name,
            targets.Crew?.Word(),
            verdict?.Verdict.Word(),
            [.. (verdict?.Figures ?? []).Select(f => Figure(f, origin(f.Figure)))],
            [.. targets.All.Select(Of)]);

    private static CheckedFigure Figure(JudgedFigure judged, FigureOrigin origin)
    {
        RigFigure figure = judged.Figure;
        bool isJudged = judged.Target is not null || judged.Reasons.Count > 0;
        return new(
            figure.Measure.Word(),
            figure.Place.Seat,
            figure.Place.Side?.Word(),
            Rounded.Figure(figure.Value.Value),
            Rounded.Figure(figure.Value.U),
            figure.Repeats,
            Codes.Of(origin.Day),
            origin.From,
            origin.Oar,
            origin.Member,
            judged.Target is { } target ? Of(target) : null,
            isJudged ? judged.Verdict.Word() : null,
            [.. judged.Reasons.Select(Reason)]);
    }

    private static CheckedRigReason Reason(RigReason reason) => new(
        reason.Kind switch
        {
            RigReasonKind.BelowLimit => "below-limit",
            RigReasonKind.AboveLimit => "above-limit",
            RigReasonKind.Sides => "sides",
            RigReasonKind.Seats => "seats",
            RigReasonKind.NotTakenSince => "not-taken-since",
            _ => "repeats",
        },
        reason.Verdict.Word(),
        Rounded.Figure(reason.Value.Value),
        Rounded.Figure(reason.Value.U),
        Rounded.Figure(reason.Limit),
        Rounded.Probability(reason.Probability),
        reason.Other is { } other ? new(other.Seat, other.Side?.Word()) : null,
        Wording.English.Rig.Of(reason));

    private readonly record struct FigureOrigin(DateOnly? Day, string? From, string? Oar = null, string? Member = null);
}
