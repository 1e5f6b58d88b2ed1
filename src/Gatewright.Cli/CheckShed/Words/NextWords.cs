using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Speaking;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>Which reading to take next, and what each outcome of it would mean.</summary>
internal static class NextWords
{
    /// <summary>The advice on a boat.</summary>
    public static Advice Of(BoatCheck check) => Advisor.For(check, AdvisingSettings.Default);

    /// <summary>"Read seat 3 port at the finish: about 15 seconds, and it tells more than any other reading would."</summary>
    public static string What(NextReading next) => string.Create(CultureInfo.InvariantCulture,
        $"{Sentence.Capital(next.Choice.ToString())}: about {next.Seconds:0} seconds, and for that it tells more than any other reading.");

    /// <summary>Why no reading is asked for.</summary>
    public static string Enough(Advice advice) => advice.IsDecided
        ? "Enough has been read: what is wrong is as sure as it needs to be."
        : advice.VerdictsSettled
            ? "Enough has been read: no further reading would change a verdict. What is wrong shows when it is mended."
            : "No single reading would tell much more: level the boat, read every station again, and compare.";

    /// <summary>
    /// Each band of outcomes and what it would mean: "up to 1.5°", "pin leans out or in at seat 3 port, 91 %"; none where
    /// the outcome changes nothing about that, but only how sure the verdict is.
    /// </summary>
    public static IEnumerable<(string Band, string Meaning)> Outcomes(NextReading next) => next.Outcomes.Count < 2
        ? []
        : next.Outcomes.Select(outcome => (
            Band(outcome.From, outcome.To),
            $"{Story(outcome.Story)}, {Figures.Percent(outcome.Story.Probability)}"));

    /// <summary>What the bands are bands of, before they are listed; null where that is what the gauge shows.</summary>
    public static string? Of(NextReading next) => next switch
    {
        { Outcomes.Count: < 2 } => null,
        { Scale: OutcomeScale.BowHigh } => "By how high the bow lies:",
        { Scale: OutcomeScale.PortLow } => "By how low port lies:",
        { Scale: OutcomeScale.GaugeZero } => "By the zero that it finds:",
        _ => null,
    };

    /// <summary>"If it shows", "If the bow lies high by".</summary>
    public static string If(NextReading next) => next.Scale switch
    {
        OutcomeScale.BowHigh => "If the bow lies high by",
        OutcomeScale.PortLow => "If port lies low by",
        OutcomeScale.GaugeZero => "If its zero is",
        _ => "If it shows",
    };

    private static string Band(Angle? from, Angle? to) => (from, to) switch
    {
        (null, { } most) => $"up to {Figures.Short(most)}°",
        ({ } least, null) => $"from {Figures.Short(least)}°",
        ({ } least, { } most) when least == most => $"{Figures.Short(least)}°",
        ({ } least, { } most) => $"{Figures.Short(least)}° to {Figures.Short(most)}°",
        _ => "whatever it is",
    };

    private static string Story(Story story) => story.IsNone
        ? "probably nothing is wrong"
        : "probably " + string.Join(" and ", story.Parts.Select(TwinWords.Name));
}
