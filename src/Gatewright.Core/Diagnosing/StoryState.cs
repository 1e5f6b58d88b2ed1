using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// The state of a boat if one story is true: normal, with mean and covariance in closed form.
/// </summary>
/// <remarks>
/// With the story's prior variances P = P₀ + D on the diagonal: mean = μ + s + P g and covariance = P − P N P, where
/// g = b′ − M_F K b′_F, N = M − M_F K M_Fᵀ K = (D⁻¹ + M_FF)⁻¹,
/// b′ = b − M s.
/// </remarks>
internal sealed class StoryState
{
    private readonly EvidenceKernel _kernel;
    private readonly int[] _unknowns;
    private readonly double[] _inner;
    private readonly double[] _variances;
    private readonly double[] _means;
    private readonly int _size;

    public StoryState(EvidenceKernel kernel, in Opened opened)
    {
        _kernel = kernel;
        _size = kernel.Model.Layout.Size;
        _unknowns = opened.Unknowns.ToArray();
        _inner = new double[opened.Count * opened.Count];
        kernel.Inner(opened, _inner);
        _variances = [.. kernel.Model.Variances];
        for (int i = 0; i < opened.Count; i++)
        {
            _variances[_unknowns[i]] += opened.Variances[i];
        }

        _means = Means(opened);
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
        Span<double> left = count <= EvidenceKernel.MostOnStack ? stackalloc double[count] : new double[count];
        Span<double> right = count <= EvidenceKernel.MostOnStack ? stackalloc double[count] : new double[count];
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

    private double[] Means(in Opened opened)
    {
        int count = opened.Count;
        Span<double> pull = count <= EvidenceKernel.MostOnStack ? stackalloc double[count] : new double[count];
        for (int i = 0; i < count; i++)
        {
            pull[i] = _kernel.ScoreAfter(opened, _unknowns[i]);
        }

        Cholesky.SolveLower(_inner, count, pull);
        Cholesky.SolveUpper(_inner, count, pull);
        double[] means = new double[_size];
        for (int k = 0; k < _size; k++)
        {
            double score = _kernel.ScoreAfter(opened, k);
            for (int f = 0; f < count; f++)
            {
                score -= _kernel.Information[(_unknowns[f] * _size) + k] * pull[f];
            }

            means[k] = _kernel.Model.Means[k] + (_variances[k] * score);
        }

        for (int i = 0; i < count; i++)
        {
            means[_unknowns[i]] += opened.Shifts[i];
        }

        return means;
    }
}
