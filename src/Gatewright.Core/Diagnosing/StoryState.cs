namespace Gatewright.Core.Diagnosing;

/// <summary>
/// The state of a boat if one story is true: normal, with mean and covariance in closed form.
/// </summary>
/// <remarks>For one question to many stories, a <see cref="StateSum"/> asked of the table is quicker.</remarks>
internal sealed class StoryState(EvidenceKernel kernel, StoryTable table, int story)
{
    /// <summary>The mean of a sum of unknowns, each times its weight.</summary>
    public double Mean(ReadOnlySpan<int> at, ReadOnlySpan<double> weights)
    {
        double sum = 0;
        for (int i = 0; i < at.Length; i++)
        {
            sum += weights[i] * kernel.Mean(at[i]);
        }

        ReadOnlySpan<int> thrown = table.Unknowns(story);
        for (int i = 0; i < thrown.Length; i++)
        {
            sum += (table.Pulls(story)[i] * Whitened(i, at, weights)) + (table.Shifts(story)[i] * Follows(thrown[i], at, weights));
        }

        return sum;
    }

    /// <summary>The covariance of two such sums.</summary>
    public double Covariance(
        ReadOnlySpan<int> at, ReadOnlySpan<double> weights, ReadOnlySpan<int> otherAt, ReadOnlySpan<double> otherWeights)
    {
        double sum = 0;
        for (int i = 0; i < at.Length; i++)
        {
            for (int j = 0; j < otherAt.Length; j++)
            {
                sum += weights[i] * otherWeights[j] * kernel.Covariance(at[i], otherAt[j]);
            }
        }

        for (int i = 0; i < table.Unknowns(story).Length; i++)
        {
            sum += Whitened(i, at, weights) * Whitened(i, otherAt, otherWeights);
        }

        return sum;
    }

    /// <summary>(W t)ᵢ.</summary>
    private double Whitened(int i, ReadOnlySpan<int> at, ReadOnlySpan<double> weights)
    {
        ReadOnlySpan<double> row = table.Rows(story).Slice(i * (i + 1) / 2, i + 1);
        double sum = 0;
        for (int j = 0; j < row.Length; j++)
        {
            sum += row[j] * Follows(table.Unknowns(story)[j], at, weights);
        }

        return sum;
    }

    /// <summary>t: how the sum follows one unknown being thrown.</summary>
    private double Follows(int thrown, ReadOnlySpan<int> at, ReadOnlySpan<double> weights)
    {
        double sum = 0;
        for (int i = 0; i < at.Length; i++)
        {
            sum += weights[i] * kernel.Follows(at[i], thrown);
        }

        return sum;
    }
}
