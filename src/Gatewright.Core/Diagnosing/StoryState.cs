using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// The state of a boat if one story is true: normal, with mean and covariance in closed form.
/// </summary>
/// <remarks>
/// With the story's prior variances P = P₀ + D on the diagonal: mean = μ + P g and covariance = P − P N P, where
/// g = b − M_F K b_F, N = M − M_F K M_Fᵀ and K = (D⁻¹ + M_FF)⁻¹.
/// </remarks>
internal sealed class StoryState
{
    private readonly EvidenceKernel _kernel;
    private readonly int[] _unknowns;
    private readonly double[] _inner;
    private readonly double[] _variances;
    private readonly double[] _means;
    private readonly int _size;

    public StoryState(EvidenceKernel kernel, ReadOnlySpan<int> unknowns, ReadOnlySpan<double> added)
    {
        _kernel = kernel;
        _size = kernel.Model.Layout.Size;
        _unknowns = unknowns.ToArray();
        _inner = new double[unknowns.Length * unknowns.Length];
        kernel.Inner(unknowns, added, _inner);
        _variances = [.. kernel.Model.Variances];
        for (int i = 0; i < unknowns.Length; i++)
        {
            _variances[unknowns[i]] += added[i];
        }

        _means = Means();
    }

    /// <summary>The mean of a sum of unknowns, each times its weight.</summary>
    public double Mean(ReadOnlySpan<int> at, ReadOnlySpan<double> weights)
    {
        double sum = 0;
        for (int i = 0; i < at.Length; i++)
        {
            sum += weights[i] * _means[at[i]];
        }

        return sum;
    }

    /// <summary>The covariance of two such sums.</summary>
    public double Covariance(
        ReadOnlySpan<int> at, ReadOnlySpan<double> weights, ReadOnlySpan<int> otherAt, ReadOnlySpan<double> otherWeights)
    {
        double own = 0;
        double explained = 0;
        for (int i = 0; i < at.Length; i++)
        {
            for (int j = 0; j < otherAt.Length; j++)
            {
                double product = weights[i] * otherWeights[j];
                if (at[i] == otherAt[j])
                {
                    own += product * _variances[at[i]];
                }

                explained += product * _variances[at[i]] * _variances[otherAt[j]]
                    * _kernel.Information[(at[i] * _size) + otherAt[j]];
            }
        }

        int count = _unknowns.Length;
        Span<double> left = stackalloc double[count];
        Span<double> right = stackalloc double[count];
        Opened(at, weights, left);
        Opened(otherAt, otherWeights, right);
        return own - explained + Cholesky.Dot(left, right);
    }

    /// <summary>L⁻¹ M_Fᵀ P w, L the factor of D⁻¹ + M_FF.</summary>
    private void Opened(ReadOnlySpan<int> at, ReadOnlySpan<double> weights, Span<double> result)
    {
        for (int f = 0; f < _unknowns.Length; f++)
        {
            double sum = 0;
            for (int i = 0; i < at.Length; i++)
            {
                sum += weights[i] * _variances[at[i]] * _kernel.Information[(_unknowns[f] * _size) + at[i]];
            }

            result[f] = sum;
        }

        Cholesky.SolveLower(_inner, _unknowns.Length, result);
    }

    private double[] Means()
    {
        int count = _unknowns.Length;
        Span<double> pull = stackalloc double[count];
        for (int i = 0; i < count; i++)
        {
            pull[i] = _kernel.Score[_unknowns[i]];
        }

        Cholesky.SolveLower(_inner, count, pull);
        Cholesky.SolveUpper(_inner, count, pull);
        double[] means = new double[_size];
        for (int k = 0; k < _size; k++)
        {
            double score = _kernel.Score[k];
            for (int f = 0; f < count; f++)
            {
                score -= _kernel.Information[(_unknowns[f] * _size) + k] * pull[f];
            }

            means[k] = _kernel.Model.Means[k] + (_variances[k] * score);
        }

        return means;
    }
}
