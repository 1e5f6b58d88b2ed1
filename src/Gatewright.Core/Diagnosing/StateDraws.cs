using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// What all gates of a boat may be at once, drawn from the posterior over every story: for questions whose answer no sum
/// gives, such as which gate is the worst.
/// </summary>
/// <remarks>
/// A story's state is the healthy one's normal, moved and widened along what the story throws (<see cref="StoryTable"/>): so
/// one factor serves all stories, and a draw costs one triangle and a row for each thrown unknown.
/// </remarks>
internal sealed class StateDraws
{
    /// <summary>Added to the variances, in square degrees, so that what was read without any doubt still has a factor.</summary>
    private const double Floor = 1e-10;

    private readonly StoryWeights _weights;
    private readonly Func<double> _normal;
    private readonly int _size;
    private readonly int[] _at;
    private readonly double[] _factor;

    /// <param name="weights">The stories.</param>
    /// <param name="normal">The next normal number about 0 of deviation 1.</param>
    /// <param name="also">Unknowns beside those of the gates, such as sleeves, by their places in the state: they are drawn after them.</param>
    public StateDraws(StoryWeights weights, Func<double> normal, params ReadOnlySpan<int> also)
    {
        (_weights, _normal) = (weights, normal);
        _at = [.. Enumerable.Range(0, 3 * weights.Kernel.Model.Layout.Gates.Count), .. also];
        _size = _at.Length;
        _factor = new double[_size * _size];
        for (int i = 0; i < _size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                _factor[(i * _size) + j] = weights.Kernel.Covariance(_at[i], _at[j]) + (i == j ? Floor : 0);
            }
        }

        if (!Cholesky.Factor(_factor, _size))
        {
            throw new InvalidOperationException("The state's covariance has no factor.");
        }
    }

    /// <summary>
    /// So many draws, each the three unknowns of every gate in the layout's order, then what else was asked for. The stories are gone through evenly by their
    /// shares (systematic sampling), so that only what varies within a story is left to chance.
    /// </summary>
    public IEnumerable<double[]> Take(int count)
    {
        int story = 0;
        double reached = _weights.Probability(0);
        for (int i = 0; i < count; i++)
        {
            double place = (i + 0.5) / count;
            while (reached < place && story < _weights.Count - 1)
            {
                reached += _weights.Probability(++story);
            }

            yield return Of(story);
        }
    }

    private double[] Of(int story)
    {
        EvidenceKernel kernel = _weights.Kernel;
        double[] state = new double[_size];
        double[] even = new double[_size];
        for (int i = 0; i < _size; i++)
        {
            even[i] = _normal();
            state[i] = kernel.Mean(_at[i]) + Cholesky.Dot(_factor.AsSpan(i * _size, i + 1), even.AsSpan(0, i + 1));
        }

        StoryTable table = _weights.Table;
        ReadOnlySpan<int> thrown = table.Unknowns(story);
        ReadOnlySpan<double> rows = table.Rows(story);
        int entry = 0;
        for (int i = 0; i < thrown.Length; i++)
        {
            double along = table.Pulls(story)[i] + _normal();
            for (int j = 0; j <= i; j++)
            {
                Follow(state, thrown[j], along * rows[entry++]);
            }

            Follow(state, thrown[i], table.Shifts(story)[i]);
        }

        return state;
    }

    private void Follow(double[] state, int thrown, double by)
    {
        if (by == 0)
        {
            return;
        }

        for (int i = 0; i < state.Length; i++)
        {
            state[i] += by * _weights.Kernel.Follows(_at[i], thrown);
        }
    }
}
