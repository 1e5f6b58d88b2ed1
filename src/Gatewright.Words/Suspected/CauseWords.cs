using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;

namespace Gatewright.Words.Suspected;

/// <summary>What is probably wrong with a gate, in plain words with probabilities.</summary>
public sealed class CauseWords
{
    private readonly Wording _say;

    internal CauseWords(Wording say) => _say = say;

    /// <summary>The causes worth telling of a gate, most probable first: "pin leans out (its top away from the hull)", 0.91.</summary>
    public IEnumerable<Likely> Of(GateDiagnosis gate) =>
        CauseChoice.Of(gate).Select(cause => new Likely(Of(cause.Cause, gate), cause.Probability));

    /// <summary>"Probably 4.1° ± 0.4 is built into gate and insert, and the pin leans 2.9° ± 0.4 out and 0.2° ± 0.4 aft."</summary>
    public string ProbablyIs(GateDiagnosis gate)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return _say.Text(
            "Cause.Probably",
            _say.Figures.Loose(gate.GatePitch),
            Directed(gate.LeanOut, "Lean.Out", "Lean.In", "Lean.OutOrIn"),
            Directed(gate.LeanAft, "Lean.Aft", "Lean.Forward", "Lean.AftOrForward"));
    }

    /// <summary>A cause as a thing with its place: "a wrong insert at seat 3 port".</summary>
    public string Some(CausePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Gate is { } gate ? _say.Text("Some.At", SomeHere(part), _say.Names.Gate(gate)) : SomeHere(part);
    }

    /// <summary>A cause as a thing where its place has been said: "a wrong insert".</summary>
    public string SomeHere(CausePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part is { Cause: Cause.GaugeZero, Gauge.Length: > 0 }
            ? _say.Text("Some.GaugeZeroNamed", part.Gauge)
            : _say.Text($"Some.{part.Cause}");
    }

    /// <summary>All that is wrong in a story: "rigger knocked or mounted wrong at seat 3 port and …", "nothing is wrong".</summary>
    public string Story(Story story)
    {
        ArgumentNullException.ThrowIfNull(story);
        return story.IsNone ? _say.Text("Story.None") : And(story.Parts.Select(Part));
    }

    /// <summary>One thing that is wrong, with its place: "rigger knocked or mounted wrong at seat 3 port".</summary>
    public string Part(CausePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        string cause = _say.Names.Cause(part.Cause);
        return part.Gate is { } gate ? _say.Text("Story.Part", cause, _say.Names.Gate(gate)) : cause;
    }

    /// <summary>
    /// What a remedy is for: "pin leans out (its top away from the hull)", the other way from where it brings the pin.
    /// </summary>
    public string Of(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        PinLean brings = remedy.Change.Pin;
        return remedy.Part.Cause switch
        {
            Cause.PinAft when brings.Aft.Degrees != 0 => _say.Text(brings.Aft.Degrees < 0 ? "Cause.PinAft.Aft" : "Cause.PinAft.Forward"),
            Cause.PinOut when brings.Out.Degrees != 0 => _say.Text(brings.Out.Degrees < 0 ? "Cause.PinOut.Out" : "Cause.PinOut.In"),
            var cause => _say.Names.Cause(cause),
        };
    }

    /// <summary>"These readings cannot tell a wrong insert at seat 1 port from a pin leaning fore or aft at seat 1 port."</summary>
    public IEnumerable<string> Twins(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Diagnosis.Twins.Select(twins => _say.Text("Twins.Sentence", Some(twins.One), Some(twins.Other)));
    }

    /// <summary>"2.9° ± 0.4 out"; either way where it is too small to have a direction.</summary>
    internal string Directed(Estimate lean, string positive, string negative, string either) =>
        IsEitherWay(lean) ? _say.Text(either, _say.Figures.Loose(lean))
        : lean.Value.Degrees > 0 ? _say.Text(positive, _say.Figures.Loose(lean))
        : _say.Text(negative, _say.Figures.Loose(lean with { Value = -lean.Value }));

    /// <summary>Whether an angle is too small to have a direction: it shows as 0.0.</summary>
    internal static bool IsEitherWay(Estimate angle) => Math.Abs(angle.Value.Degrees) < FigureWords.ShownStep / 2;

    /// <summary>"one", "one and another", "one and another and a third".</summary>
    internal string And(IEnumerable<string> parts) => parts.Aggregate((one, other) => _say.Text("List.And", one, other));

    private string Of(Cause? cause, GateDiagnosis gate) => cause switch
    {
        null => _say.Text("Cause.None"),
        Cause.PinAft => _say.Text(gate.LeanAft.Value.Degrees >= 0 ? "Cause.PinAft.Aft" : "Cause.PinAft.Forward"),
        Cause.PinOut => _say.Text(gate.LeanOut.Value.Degrees >= 0 ? "Cause.PinOut.Out" : "Cause.PinOut.In"),
        Cause.Rigger when Top(gate) is { Count: > 0 } ways => _say.Text("Cause.Rigger.Top", And(ways)),
        _ => _say.Names.Cause(cause.Value),
    };

    /// <summary>Which way a rigger took the pin's top, as far as it is known: "away from the hull", "to the bow".</summary>
    private List<string> Top(GateDiagnosis gate)
    {
        List<string> ways = [];
        if (IsKnown(gate.LeanOut))
        {
            ways.Add(_say.Text(gate.LeanOut.Value.Degrees > 0 ? "Top.Out" : "Top.In"));
        }

        if (IsKnown(gate.LeanAft))
        {
            ways.Add(_say.Text(gate.LeanAft.Value.Degrees > 0 ? "Top.Aft" : "Top.Forward"));
        }

        return ways;
    }

    /// <summary>A lean of less than two u may be the other way.</summary>
    private static bool IsKnown(Estimate lean) => Math.Abs(lean.Value.Degrees) >= 2 * lean.U.Degrees;
}
