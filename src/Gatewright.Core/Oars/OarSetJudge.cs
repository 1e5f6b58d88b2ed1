using Gatewright.Core.Judging;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Oars;

/// <summary>What a number of oars lets one say of any one of them.</summary>
public enum SetWorth
{
    /// <summary>One oar, or none: nothing to compare with.</summary>
    Alone,

    /// <summary>Two: that they differ can be told, which of them is off cannot.</summary>
    Pair,

    /// <summary>Three to six: each against the middle of the set; too few for a test of outliers.</summary>
    Few,

    /// <summary>Seven to fourteen: the test of outliers holds approximately.</summary>
    Fair,

    /// <summary>Fifteen or more: the test keeps its level.</summary>
    Full,
}

/// <summary>An oar's figure against the middle of its set.</summary>
/// <param name="Oar">The oar.</param>
/// <param name="Figure">Its figure.</param>
/// <param name="Off">How far it lies above the middle of the set, in the item's unit.</param>
/// <param name="OffU">The standard uncertainty of that: what the set shares has dropped out.</param>
/// <param name="Verdict">Good within the tolerance; outside it adjust where that is sure enough, else unsure.</param>
/// <param name="OutsideProbability">The probability that it lies outside the tolerance.</param>
/// <param name="IsOutlier">Whether the test of outliers marks it; null where the set is too small to ask.</param>
public sealed record JudgedOar(
    Oar Oar, OarFigure Figure, double Off, double OffU, Verdict Verdict, double OutsideProbability, bool? IsOutlier);

/// <summary>A set judged by one item.</summary>
/// <param name="Item">Which.</param>
/// <param name="Worth">What so many oars let one say.</param>
/// <param name="Oars">Those of which it is known, in the set's order.</param>
/// <param name="Median">The median of all of them; NaN for none.</param>
/// <param name="Range">The largest less the smallest; NaN for none.</param>
/// <param name="Tolerance">What it was judged by.</param>
public sealed record JudgedItem(
    OarItem Item, SetWorth Worth, IReadOnlyList<JudgedOar> Oars, double Median, double Range, double Tolerance)
{
    /// <summary>The worst verdict; null where there is nothing to compare.</summary>
    public Verdict? Verdict
    {
        get
        {
            Verdict? worst = null;
            if (Worth != SetWorth.Alone)
            {
                foreach (JudgedOar oar in Oars)
                {
                    worst = worst is { } so ? Verdicts.Worse(so, oar.Verdict) : oar.Verdict;
                }
            }

            return worst;
        }
    }

    /// <summary>What is told of an oar; null where the item is not known of it.</summary>
    public JudgedOar? Find(string oar)
    {
        foreach (JudgedOar judged in Oars)
        {
            if (judged.Oar.Key == oar)
            {
                return judged;
            }
        }

        return null;
    }
}

/// <summary>
/// Compares the oars of a set. Each is held against the middle of the set, where their number is even against that of the others: the middle
/// is always one oar's own value, and no single oar draws it. Brought to it, an oar lies at the median of the whole set.
/// </summary>
public static class OarSetJudge
{
    /// <summary>A set by one item.</summary>
    public static JudgedItem Of(IReadOnlyList<Oar> oars, OarItem item, OarTolerances? tolerances = null, DecisionRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(oars);
        double tolerance = (tolerances ?? OarTolerances.Default)[item];
        var known = new List<Oar>();
        var figures = new List<OarFigure>();
        foreach (Oar oar in oars)
        {
            if (oar[item] is { } figure)
            {
                known.Add(oar);
                figures.Add(figure);
            }
        }

        SetWorth worth = Worth(known.Count);
        if (known.Count == 0)
        {
            return new(item, worth, [], double.NaN, double.NaN, tolerance);
        }

        bool[]? isOutlier = worth >= SetWorth.Fair ? Marked(figures) : null;
        var judged = new JudgedOar[known.Count];
        double least = double.PositiveInfinity;
        double most = double.NegativeInfinity;
        for (int i = 0; i < judged.Length; i++)
        {
            judged[i] = Judged(known[i], figures, i, tolerance, rule ?? DecisionRule.Default, isOutlier?[i]);
            least = Math.Min(least, figures[i].Value);
            most = Math.Max(most, figures[i].Value);
        }

        return new(item, worth, judged, OarFigure.Combined(figures, Oars.Median.Weights(figures, -1)).Value, most - least, tolerance);
    }

    /// <summary>How many outliers may be looked for: a third, since more than that are no outliers but another set.</summary>
    internal static int MostOutliers(int count) => count / 3;

    private static SetWorth Worth(int count) => count switch
    {
        < 2 => SetWorth.Alone,
        2 => SetWorth.Pair,
        < Outliers.Fewest => SetWorth.Few,
        < Outliers.Exact => SetWorth.Fair,
        _ => SetWorth.Full,
    };

    private static JudgedOar Judged(Oar oar, List<OarFigure> figures, int at, double tolerance, DecisionRule rule, bool? isOutlier)
    {
        if (figures.Count == 1)
        {
            return new(oar, figures[0], 0, 0, Verdict.Good, 0, null);
        }

        // Of an odd number the middle one of all, of an even number that of the others: either way it is one oar's own value. Half of
        // the middle two would make two sound oars of three look off, where the third has slipped.
        double[] weights = Oars.Median.Weights(figures, figures.Count % 2 == 0 ? at : -1);
        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] = (i == at ? 1 : 0) - weights[i];
        }

        (double off, double u) = OarFigure.Combined(figures, weights);
        (Verdict verdict, double outside) = rule.Limits(off, u, -tolerance, tolerance);
        return new(oar, figures[at], off, u, verdict, outside, isOutlier);
    }

    private static bool[] Marked(List<OarFigure> figures)
    {
        double[] values = new double[figures.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = figures[i].Value;
        }

        bool[] marked = new bool[values.Length];
        foreach (int i in Outliers.Find(values, MostOutliers(values.Length)))
        {
            marked[i] = true;
        }

        return marked;
    }
}
