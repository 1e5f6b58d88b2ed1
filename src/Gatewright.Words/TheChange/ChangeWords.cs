using Gatewright.Core.Changing;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;

namespace Gatewright.Words.TheChange;

/// <summary>What is said of the way from one rig to another: what to do, why in that order, what comes of it, what to read again.</summary>
public sealed class ChangeWords
{
    private readonly Wording _say;

    internal ChangeWords(Wording say) => _say = say;

    /// <summary>"spread", "pitch at the catch".</summary>
    public string Item(RigItem item) => item.Measure() is { } measure ? _say.Rig.Measure(measure) : _say.Text($"Change.Item.{item}");

    /// <summary>"84.0 cm", "4.0°".</summary>
    public string Figure(RigItem item, double value) => _say.Rig.Figure(value, Unit(item));

    /// <summary>"84.0 ± 0.3 cm".</summary>
    public string Figure(RigItem item, RigEstimate value) => _say.Rig.Figure(value, Unit(item));

    /// <summary>A part of the work: "Riggers to their seats".</summary>
    public string Phase(ChangePhase phase) => _say.Text($"Change.Phase.{phase}");

    /// <summary>Why it stands where it stands.</summary>
    public string Why(ChangePhase phase) => _say.Text($"Change.Why.{phase}");

    /// <summary>"From Teal to Teal, 2026-03-01: 3 steps, 2 riggers moved."</summary>
    public string Head(ChangePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        string steps = _say.Counted("Change.Steps", plan.Steps.Count, plan.Steps.Count);
        string moved = plan.RiggersMoved == 0 ? steps : $"{steps}, {_say.Counted("Change.Moved", plan.RiggersMoved, plan.RiggersMoved)}";
        return plan.Steps.Count == 0 ? _say.Text(plan.Unclear.Count == 0 ? "Change.Nothing" : "Change.NothingYet") : _say.Text("Change.Head", plan.Rig.Name, plan.Target.Name, moved);
    }

    /// <summary>What to do.</summary>
    public string Step(ChangeStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        string place = Sentence.Capital(_say.Rig.Place(step.Place));
        return step.Item is not { } item ? Move(step)
            : step.Work is { } work ? _say.Text("Change.At", place, _say.Work.Instruction([work]))
            : _say.Text("Change.Set", place, Item(item), Figure(item, step.Before!.Value.Value), Figure(item, step.After!.Value.Value));
    }

    /// <summary>What comes of it: what to expect, and what else comes out otherwise; null where nothing is to be said.</summary>
    public string? Follows(ChangeStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        string? expect = step is { Item: { } item, After: { } after, Work: not null }
            ? _say.Text("Change.Expect", $"{Item(item)} {Figure(item, after)}")
            : null;
        string? effects = step.Effects.Count == 0 ? null : _say.Text("Change.Effects", string.Join(", ", step.Effects.Select(Effect)));
        return expect is not null && effects is not null ? _say.Text("Sentence.Two", expect, effects) : expect ?? effects;
    }

    /// <summary>What is to be measured before anything is done about it, a sentence each; of what nobody measured the places together.</summary>
    public IReadOnlyList<string> Unclear(ChangePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Unclear
            .GroupBy(u => (u.Why, u.Aim.Item, u.Aim.Value, Of: u.Why == UnclearWhy.NotMeasured ? default : u.Place))
            .Select(g => Unclear(g.First(), string.Join(", ", g.Select(u => _say.Rig.Place(u.Place)))))];
    }

    private string Unclear(UnclearItem unclear, string places)
    {
        RigItem item = unclear.Aim.Item;
        return _say.Text(
            $"Change.Unclear.{unclear.Why}",
            Sentence.Capital(places),
            Item(item),
            Figure(item, unclear.Aim.Value),
            unclear.Now is { } now ? Figure(item, now) : string.Empty);
    }

    /// <summary>What a change takes, frees and lacks, a sentence each.</summary>
    public IReadOnlyList<string> Parts(ChangePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var told = new List<string>();
        Add("Change.Parts", plan.Parts);
        Add("Change.Freed", plan.Freed);
        Add("Change.Missing", plan.Missing);
        return told;

        void Add(string key, IReadOnlyList<PartCount> parts)
        {
            if (parts.Count > 0)
            {
                told.Add(_say.Text(key, string.Join(", ", parts.Select(_say.Names.Part))));
            }
        }
    }

    /// <summary>Before what is to be read again.</summary>
    public string ReadAgainHead => _say.Text("Change.ReadAgain");

    /// <summary>Before what is to be measured first.</summary>
    public string MeasureFirstHead => _say.Text("Change.MeasureFirst");

    /// <summary>What is to be read again, a line a place: "seat 2 port: height, pitch at the catch".</summary>
    public IReadOnlyList<string> ReadAgain(ChangePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.ReadAgain.GroupBy(r => r.Place).OrderBy(g => g.Key)
            .Select(g => _say.Text("Change.At", _say.Rig.Place(g.Key), string.Join(", ", g.Select(r => Item(r.Item)))))];
    }

    /// <summary>"overlap from 32.0 cm to 31.0 cm", "gearing from 3.04 to 3.00".</summary>
    public string Effect(ChangeEffect effect)
    {
        ArgumentNullException.ThrowIfNull(effect);
        string Told(double value) => effect.Of switch
        {
            EffectOf.Gearing => _say.Figures.Fixed(value, 2),
            EffectOf.Overlap => Figure(RigItem.Overlap, value),
            _ => Figure(RigItem.PitchAbeam, value),
        };
        return _say.Text("Change.Effect", _say.Text($"Change.Effect.{effect.Of}"), Told(effect.Before), Told(effect.After));
    }

    internal static RigUnit Unit(RigItem item) => item.IsAngle() ? RigUnit.Degrees : RigUnit.Centimetres;

    private string Move(ChangeStep step)
    {
        string? to = step.To is { } t ? _say.Names.Gate(t) : null;
        string? from = step.From is { } f ? _say.Names.Gate(f) : null;
        return (step.Phase, step.Mark, from, to) switch
        {
            (ChangePhase.Oars, { } mark, { } one, { } other) => _say.Text("Change.Oar.Move", mark, one, other),
            (ChangePhase.Oars, { } mark, null, { } other) => _say.Text("Change.Oar.Fetch", mark, other),
            (_, { } mark, { } one, { } other) => _say.Text("Change.Rigger.Move", mark, one, other),
            (_, null, { } one, { } other) => _say.Text("Change.Rigger.MoveBare", one, other),
            (_, { } mark, null, { } other) => _say.Text("Change.Rigger.Fetch", mark, other),
            (_, null, null, { } other) => _say.Text("Change.Rigger.FetchBare", other),
            (_, { } mark, _, _) => _say.Text("Change.Rigger.Off", mark, from),
            _ => _say.Text("Change.Rigger.OffBare", from),
        };
    }
}
