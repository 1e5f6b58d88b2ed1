using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Advising;

/// <summary>
/// The entropy to expect once a reading has been taken, over stories and over verdicts, by quadrature over its outcome.
/// </summary>
/// <remarks>
/// The outcome is a mixture of normals, one a story, so the expectation is a sum over stories of an integral against a
/// normal density; each is taken by the trapezium rule in standard units, which converges geometrically for a smooth
/// integrand against a normal weight. With this step it agrees with a rule four times as fine to 0.001 bit.
/// </remarks>
internal sealed class ExpectedEntropy
{
    private const double Step = 0.75;
    private const int Reach = 6;

    /// <summary>A story this unlikely after the outcome moves no class by as much as a tenth of a percent.</summary>
    private const double NotWorthAdding = 1e-3;

    private readonly OutcomeModel _outcomes;
    private readonly IReadOnlyList<VerdictStation> _stations;
    private readonly double[,] _means;
    private readonly double[,] _deviations;
    private readonly double[,,] _gains;

    public ExpectedEntropy(
        Observation observation,
        OutcomeModel outcomes,
        IReadOnlyList<StoryState> states,
        IReadOnlyList<VerdictStation> stations)
    {
        _outcomes = outcomes;
        _stations = stations;
        _means = new double[states.Count, stations.Count];
        _deviations = new double[states.Count, stations.Count];
        _gains = new double[states.Count, stations.Count, 2];
        for (int k = 0; k < states.Count; k++)
        {
            for (int s = 0; s < stations.Count; s++)
            {
                Condition(k, s, observation, states[k]);
            }
        }
    }

    /// <summary>The entropies to expect, in bits.</summary>
    public (double Causes, double Verdicts) Bits(double step = Step)
    {
        int reach = (int)Math.Ceiling(Reach * Step / step);
        int second = _outcomes.Dimensions == 1 ? 0 : reach;
        double[] posterior = new double[_outcomes.Weights.Length];
        double causes = 0;
        double verdicts = 0;
        double total = 0;
        for (int h = 0; h < _outcomes.Weights.Length; h++)
        {
            for (int i = -reach; i <= reach; i++)
            {
                for (int j = -second; j <= second; j++)
                {
                    (double one, double two) = (i * step, j * step);
                    double weight = _outcomes.Weights[h] * Math.Exp(-0.5 * ((one * one) + (two * two)));
                    (double first, double other) = Outcome(h, one, two);
                    _outcomes.Posterior(first, other, posterior);
                    causes += weight * Entropy.Bits(posterior);
                    verdicts += weight * VerdictBits(first, other, posterior);
                    total += weight;
                }
            }
        }

        return (causes / total, verdicts / total);
    }

    private (double First, double Second) Outcome(int story, double one, double two) =>
        (_outcomes.Means[story, 0] + (_outcomes.Factors[story, 0] * one),
         _outcomes.Means[story, 1] + (_outcomes.Factors[story, 1] * one) + (_outcomes.Factors[story, 2] * two));

    private double VerdictBits(double first, double second, ReadOnlySpan<double> posterior)
    {
        double bits = 0;
        Span<double> classes = stackalloc double[VerdictStation.Classes];
        for (int s = 0; s < _stations.Count; s++)
        {
            classes.Clear();
            for (int k = 0; k < posterior.Length; k++)
            {
                if (posterior[k] < NotWorthAdding)
                {
                    continue;
                }

                (double one, double two) = _outcomes.Standardised(k, first, second);
                double mean = _means[k, s] + (_gains[k, s, 0] * one) + (_gains[k, s, 1] * two);
                _stations[s].Add(posterior[k], mean, _deviations[k, s], classes);
            }

            bits += Entropy.Bits(classes);
        }

        return bits;
    }

    /// <summary>The station's pitch given the outcome: normal, its mean linear in the standardised outcome.</summary>
    private void Condition(int k, int s, Observation observation, StoryState state)
    {
        VerdictStation station = _stations[s];
        _means[k, s] = state.Mean(station.At, station.Weights);
        double variance = state.Covariance(station.At, station.Weights, station.At, station.Weights);
        (int[] at, double[] w) = observation.Sums[0];
        double one = state.Covariance(station.At, station.Weights, at, w) / _outcomes.Factors[k, 0];
        double two = 0;
        if (observation.Dimensions == 2)
        {
            (int[] at2, double[] w2) = observation.Sums[1];
            double cross = state.Covariance(station.At, station.Weights, at2, w2);
            two = (cross - (_outcomes.Factors[k, 1] * one)) / _outcomes.Factors[k, 2];
        }

        _gains[k, s, 0] = one;
        _gains[k, s, 1] = two;
        _deviations[k, s] = Math.Sqrt(Math.Max(1e-12, variance - (one * one) - (two * two)));
    }
}
