using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Words.ToRead;

/// <summary>Which reading to take next, and what each outcome of it would mean.</summary>
public sealed class NextWords
{
    private readonly Wording _say;

    internal NextWords(Wording say) => _say = say;

    /// <summary>The advice on a boat.</summary>
    public static Advice For(BoatCheck check) => Advisor.For(check, AdvisingSettings.Default);

    /// <summary>What to do: "read seat 3 port at the finish".</summary>
    public string Of(ReadingChoice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return _say.Text($"Next.{choice.Item}", Gate(choice), At(choice));
    }

    /// <summary>"Read seat 3 port at the finish: about 15 seconds, and for that it tells more than any other reading."</summary>
    public string What(NextReading next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return _say.Text("Next.What", Sentence.Capital(Of(next.Choice)), Seconds(next));
    }

    /// <summary>In brief: "Read the pin of seat 3 port, from the side: about 30 seconds."</summary>
    public string Brief(NextReading next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return _say.Text($"Next.Short.{next.Choice.Item}", Gate(next.Choice), At(next.Choice), Seconds(next));
    }

    /// <summary>
    /// The gates that come before all advice: told of as knocked or refitted, so that what was read of them is old, and not read
    /// since; null where there is none. Nothing is known of them that could be weighed.
    /// </summary>
    public string? Told(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        List<GatePlace> unread = [.. check.Context.Reports
            .Where(r => r.Kind.ChangesTheGate())
            .Select(r => r.Gate)
            .OfType<GatePlace>()
            .Except(check.Verdict.Gates.Select(g => g.Gate))
            .Order()];
        return unread.Count == 0 ? null : _say.Text("Next.Told", _say.Names.Gates(unread));
    }

    /// <summary>Why no reading is asked for.</summary>
    public string Enough(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return _say.Text(
            advice.IsDecided ? "Next.Enough.Decided" : advice.VerdictsSettled ? "Next.Enough.Settled" : "Next.Enough.Stuck");
    }

    /// <summary>
    /// Each band of outcomes and what it would mean: "up to 1.5°", "probably a pin leaning out or in at seat 3 port, 91 %";
    /// none where the outcome changes nothing about that, but only how sure the verdict is.
    /// </summary>
    public IEnumerable<(string Band, string Meaning)> Outcomes(NextReading next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return next.Outcomes.Count < 2
            ? []
            : next.Outcomes.Select(outcome => (Band(outcome.From, outcome.To), Meaning(outcome.Story)));
    }

    /// <summary>The same as sentences: "If it shows up to 1.5°: probably a pin leaning out or in at seat 3 port, 91 %."</summary>
    public IEnumerable<string> If(NextReading next) =>
        Outcomes(next).Select(outcome => _say.Text($"If.{next.Scale}", outcome.Band, outcome.Meaning));

    /// <summary>What the bands are bands of, before they are listed; null where that is what the gauge shows.</summary>
    public string? Scale(NextReading next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return next.Outcomes.Count < 2 ? null : next.Scale switch
        {
            OutcomeScale.BowHigh => _say.Text("Scale.BowHigh"),
            OutcomeScale.PortLow => _say.Text("Scale.PortLow"),
            OutcomeScale.GaugeZero => _say.Text("Scale.GaugeZero"),
            _ => null,
        };
    }

    private string Gate(ReadingChoice choice) => choice.Gate is { } gate ? _say.Names.Gate(gate) : string.Empty;

    private string At(ReadingChoice choice) => choice.At is { } at ? _say.Names.AtPoint(at) : string.Empty;

    private string Seconds(NextReading next) => _say.Figures.Fixed(next.Seconds, 0);

    private string Band(Angle? from, Angle? to) => (from, to) switch
    {
        (null, { } most) => _say.Text("Band.UpTo", _say.Figures.Brief(most)),
        ({ } least, null) => _say.Text("Band.From", _say.Figures.Brief(least)),
        ({ } least, { } most) when least == most => _say.Text("Band.Exactly", _say.Figures.Brief(least)),
        ({ } least, { } most) => _say.Text("Band.Between", _say.Figures.Brief(least), _say.Figures.Brief(most)),
        _ => _say.Text("Band.Any"),
    };

    private string Meaning(Story story) => story.IsNone
        ? _say.Text("Outcome.None", _say.Figures.Percent(story.Probability))
        : _say.Text("Outcome.Probably", _say.Causes.And(story.Parts.Select(_say.Causes.Some)), _say.Figures.Percent(story.Probability));
}
