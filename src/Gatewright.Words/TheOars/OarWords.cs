using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Oars;

namespace Gatewright.Words.TheOars;

/// <summary>What is said of oars: what a set tells of each of them, and how a sleeve is brought in line.</summary>
public sealed class OarWords
{
    private readonly Wording _say;

    internal OarWords(Wording say) => _say = say;

    /// <summary>"sleeve", "length".</summary>
    public string Item(OarItem item) => _say.Text($"Oars.Item.{item}");

    /// <summary>A unit behind a figure: "°", " cm", " kg".</summary>
    public static string Unit(OarItem item) => item switch { OarItem.Sleeve => "°", OarItem.Weight => " kg", _ => " cm" };

    /// <summary>"1.5 ± 0.4°", "376.0 ± 0.2 cm".</summary>
    public string Figure(OarItem item, double value, double u) =>
        _say.Text("Figure.Bare", Digits(item, value), Digits(item, u)) + Unit(item);

    /// <summary>What so many oars let one say of one of them.</summary>
    public string Worth(SetWorth worth) => _say.Text($"Oars.Worth.{worth}");

    /// <summary>How far an oar lies from the others of its set, with the numbers; what the test of outliers says, where it was asked.</summary>
    public string Off(JudgedItem item, JudgedOar oar)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(oar);
        string others = _say.Text(item.Worth == SetWorth.Pair ? "Oars.TheOther" : "Oars.TheOthers");
        string sentence = _say.Text(
            oar.Off < 0 ? $"Oars.Off.{item.Item}.Less" : $"Oars.Off.{item.Item}.More",
            oar.Oar.Name,
            Figure(item.Item, Math.Abs(oar.Off), oar.OffU),
            others,
            _say.Figures.Brief(item.Tolerance) + Unit(item.Item),
            _say.Figures.Percent(oar.OutsideProbability));
        if (oar.Verdict == Verdict.Unsure)
        {
            sentence = _say.Text("Sentence.Two", sentence, _say.Text("Reason.TooClose"));
        }

        return oar.IsOutlier == true ? _say.Text("Sentence.Two", sentence, _say.Text("Oars.Outlier")) : sentence;
    }

    /// <summary>How a sleeve is brought in line, and what is to be minded.</summary>
    public string Turn(string oar, SleeveTurn turn) => _say.Text(
        "Sentence.Two",
        _say.Text(
            turn.ToBowDegrees > 0 ? "Oars.Turn.ToBow" : "Oars.Turn.ToStern",
            oar,
            _say.Figures.Fixed(Math.Abs(turn.ToBowDegrees), 1),
            _say.Figures.Fixed(turn.RoundMm, 1),
            _say.Figures.Length(turn.DiameterMm)),
        _say.Text("Sentence.Two", _say.Cautions.Of(Caution.Glue), _say.Cautions.Of(Caution.Defer)));

    /// <summary>Which way a reading of a sleeve counts as positive: the flat's bow end higher, or its stern end.</summary>
    public string Positive(Lie lie, OarLaid laid) => _say.Text(laid.IsPositiveToBow(lie) ? "Oars.Positive.Bow" : "Oars.Positive.Stern");

    /// <summary>"handle away from the boat", "shaft across the boat".</summary>
    public string Laid(OarLaid laid) => _say.Text($"Oars.Laid.{laid}");

    /// <summary>The oars that go best together, or that there are not so many of which enough is known.</summary>
    /// <param name="match">The oars; null where there are not so many.</param>
    /// <param name="count">How many were asked for.</param>
    /// <param name="pool">How many they were chosen from, where that is known: of all there are nothing was chosen.</param>
    public string Matched(MatchedOars? match, int count, int? pool = null)
    {
        if (match is null)
        {
            return _say.Text("Oars.NotSoMany", count);
        }

        string spread = _say.Figures.Degrees(match.Spread);
        return (count == pool, count) switch
        {
            (true, 2) => Pair(match) + ".",
            (true, > 2) => _say.Text("Oars.MatchedAll", count, spread),
            (_, 2) => _say.Text("Oars.MatchedTwo", Names(match), spread),
            _ => _say.Text("Oars.Matched", count, Names(match), spread),
        };
    }

    /// <summary>A pair that goes well together: "A and B: 0.4 of the tolerance apart".</summary>
    public string Pair(MatchedOars pair)
    {
        ArgumentNullException.ThrowIfNull(pair);
        return _say.Text("Oars.Pair", pair.Oars[0].Name, pair.Oars[1].Name, _say.Figures.Degrees(pair.Spread));
    }

    /// <summary>What a verdict within a set does not say.</summary>
    public string Rough => _say.Text("Oars.Rough");

    private static string Names(MatchedOars match) => string.Join(", ", match.Oars.Select(o => o.Name));

    private string Digits(OarItem item, double value) => _say.Figures.Fixed(value, item == OarItem.Weight ? 2 : 1);
}
