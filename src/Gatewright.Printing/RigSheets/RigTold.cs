using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Journal.Rigging;
using Gatewright.Words;

namespace Gatewright.Printing.RigSheets;

/// <summary>What is said of a boat's rig on paper: each measure against its target, and why one is not good.</summary>
internal sealed class RigTold(Imprint imprint, BoatRig rig)
{
    private readonly Wording _say = imprint.Say;

    /// <summary>Every measure that has a target or was taken, in the order in which a boat is set up.</summary>
    public IEnumerable<SheetMeasure> Measures()
    {
        if (rig.View.Boat.Class is not { } boatClass)
        {
            yield break;
        }

        foreach (RigMeasure measure in RigMeasures.All.Where(m => m.IsOf(boatClass.Rowing)))
        {
            bool isTwice = measure.HasSide() && boatClass.Rowing == Rowing.Scull;
            foreach (Side? side in isTwice ? new Side?[] { Side.Port, Side.Starboard } : [null])
            {
                SheetMeasure row = Row(measure, side, boatClass);
                if (row.Target is not null || row.IsMeasured)
                {
                    yield return row;
                }
            }
        }
    }

    /// <summary>Why the rig is not good, the worst first.</summary>
    public IEnumerable<string> Reasons() => rig.Verdict is null
        ? []
        : rig.Verdict.Figures
            .SelectMany(f => f.Reasons)
            .Where(r => r.Verdict != Verdict.Good)
            .OrderByDescending(r => r.Verdict)
            .Select(r => $"{Sentence.Capital(_say.Names.Verdict(r.Verdict))}: {_say.Rig.Of(r)}")
            .Distinct();

    /// <summary>When the rig was last measured; null for never.</summary>
    public string? Measured() => rig.LastMeasured is { } day ? imprint.Texts["Sheet.Measured", _say.Language.Day(day)] : null;

    /// <summary>Where the targets come from; null where there are none.</summary>
    public string? Targets()
    {
        string told = _say.Rig.Sources([.. Places()
            .Select(p => rig.View.Targets?.Find(p.Measure, RigAspect.Value, p.Place)?.Source)
            .OfType<RigSource>()]);
        return told.Length == 0 ? null : imprint.Texts["Sheet.Targets", told];
    }

    private IEnumerable<(RigMeasure Measure, RigPlace Place)> Places() =>
        RigMeasures.All.SelectMany(m => rig.View.Places(m).Select(p => (m, p)));

    private SheetMeasure Row(RigMeasure measure, Side? side, BoatClass boatClass)
    {
        List<RigPlace> places = [.. rig.View.Places(measure).Where(p => side is null || p.Side == side)];
        IEnumerable<string> targets = places
            .Select(p => rig.View.Targets?.Find(measure, RigAspect.Value, p))
            .OfType<RigTarget>()
            .Select(_say.Rig.Range)
            .Distinct();
        string target = string.Join("; ", targets);
        return new(
            Sentence.Capital(_say.Rig.Measure(measure)),
            Unit(measure),
            Name(measure, side),
            target.Length == 0 ? null : target,
            measure is RigMeasure.Spread or RigMeasure.Span or RigMeasure.Height or RigMeasure.Inboard or RigMeasure.OarLength,
            [.. Enumerable.Range(1, boatClass.Seats).Select(seat => Value(measure, places.FirstOrDefault(p => p.Seat == seat)))]);
    }

    private static string Unit(RigMeasure measure) => measure.IsAngle() ? "°" : "cm";

    private string Name(RigMeasure measure, Side? side)
    {
        string name = $"{Sentence.Capital(_say.Rig.Measure(measure))}, {Unit(measure)}";
        return side is { } one ? $"{name}, {_say.Names.Side(one)}" : name;
    }

    private SheetValue? Value(RigMeasure measure, RigPlace place) => rig.Verdict?.Find(measure, place) is { } judged
        ? new(
            _say.Figures.Degrees(judged.Figure.Value.Value),
            _say.Figures.Degrees(judged.Figure.Value.U, 2),
            judged.Figure.Value.U,
            judged.Target is null && judged.Verdict == Verdict.Good ? null : judged.Verdict,
            judged.Figure.IsComputed)
        : null;
}
