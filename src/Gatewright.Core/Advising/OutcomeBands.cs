using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Advising;

/// <summary>What each outcome of a reading would mean: bands of outcomes in which one story leads.</summary>
internal static class OutcomeBands
{
    /// <summary>Bands are told to the step of a gauge in half degrees.</summary>
    private const double Step = 0.5;

    /// <summary>A band less likely than this is left to its neighbour.</summary>
    private const double LeastChance = 0.02;

    public static List<ReadingOutcome> Of(OutcomeModel outcomes, IReadOnlyList<Story> stories)
    {
        int dimension = Telling(outcomes);
        (double from, double to) = Span(outcomes, dimension);
        var bands = new List<(double From, double To, double Chance, int Story, double Probability)>();
        for (double low = from; low < to - (Step / 2); low += Step)
        {
            (double chance, int story, double probability) = Cell(outcomes, dimension, low);
            if (bands.Count > 0 && (bands[^1].Story == story || chance < LeastChance / 10))
            {
                var last = bands[^1];
                double best = chance > last.Chance ? probability : last.Probability;
                bands[^1] = (last.From, low + Step, last.Chance + chance, last.Story, best);
            }
            else
            {
                bands.Add((low, low + Step, chance, story, probability));
            }
        }

        bands = [.. bands.Where(b => b.Chance >= LeastChance)];
        return [.. bands.Select((b, i) => new ReadingOutcome(
            i == 0 ? null : Angle.FromDegrees(b.From + (Step / 2)),
            i == bands.Count - 1 ? null : Angle.FromDegrees(b.To - (Step / 2)),
            b.Chance,
            new(stories[b.Story].Parts, b.Probability)))];
    }

    /// <summary>Of a level's two directions, the one whose outcome the stories disagree about more.</summary>
    private static int Telling(OutcomeModel outcomes) =>
        outcomes.Dimensions == 2 && Spread(outcomes, 1) > Spread(outcomes, 0) ? 1 : 0;

    private static double Spread(OutcomeModel outcomes, int dimension) =>
        new GaussianMixture(outcomes.Weights, Means(outcomes, dimension), Deviations(outcomes, dimension)).Sd;

    private static (double From, double To) Span(OutcomeModel outcomes, int dimension)
    {
        double[] means = Means(outcomes, dimension);
        double[] deviations = Deviations(outcomes, dimension);
        double low = means.Zip(deviations, (m, s) => m - (3 * s)).Min();
        double high = means.Zip(deviations, (m, s) => m + (3 * s)).Max();

        // Cells stand about the half degrees that a gauge shows.
        return ((Math.Floor(low / Step) * Step) - (Step / 2), (Math.Ceiling(high / Step) * Step) + (Step / 2));
    }

    private static (double Chance, int Story, double Probability) Cell(OutcomeModel outcomes, int dimension, double low)
    {
        double[] means = Means(outcomes, dimension);
        double[] deviations = Deviations(outcomes, dimension);
        double total = 0;
        double best = 0;
        int leader = 0;
        for (int k = 0; k < means.Length; k++)
        {
            double chance = outcomes.Weights[k]
                * (Normal.Cdf((low + Step - means[k]) / deviations[k]) - Normal.Cdf((low - means[k]) / deviations[k]));
            total += chance;
            if (chance > best)
            {
                (best, leader) = (chance, k);
            }
        }

        return (total, leader, total > 0 ? best / total : 0);
    }

    private static double[] Means(OutcomeModel outcomes, int dimension) =>
        [.. Enumerable.Range(0, outcomes.Weights.Length).Select(k => outcomes.Means[k, dimension])];

    private static double[] Deviations(OutcomeModel outcomes, int dimension) =>
        [.. Enumerable.Range(0, outcomes.Weights.Length).Select(k => dimension == 0
            ? outcomes.Factors[k, 0]
            : Math.Sqrt((outcomes.Factors[k, 1] * outcomes.Factors[k, 1]) + (outcomes.Factors[k, 2] * outcomes.Factors[k, 2])))];
}
