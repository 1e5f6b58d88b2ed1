namespace Gatewright.Core.Advising;

/// <summary>
/// How the outcome of a reading is distributed under each account of a gate: normal, of one or two dimensions.
/// </summary>
internal sealed class OutcomeModel
{
    public OutcomeModel(Observation observation, GateView view)
    {
        Dimensions = observation.Dimensions;
        Weights = view.Weights;
        int count = Weights.Length;
        Means = new double[count, 2];
        Factors = new double[count, 3];
        for (int k = 0; k < count; k++)
        {
            Fill(k, observation, view.Accounts[k]);
        }
    }

    public int Dimensions { get; }

    public double[] Weights { get; }

    /// <summary>The mean outcome under each account.</summary>
    public double[,] Means { get; }

    /// <summary>
    /// The Cholesky factor of the outcome's covariance under each account: l₁₁, l₂₁, l₂₂; 0 and 1 in one dimension.
    /// </summary>
    public double[,] Factors { get; }

    /// <summary>The standard deviation of one dimension under an account.</summary>
    public double Deviation(int account, int dimension) => dimension == 0
        ? Factors[account, 0]
        : Math.Sqrt((Factors[account, 1] * Factors[account, 1]) + (Factors[account, 2] * Factors[account, 2]));

    /// <summary>The same, the other dimension being known: the finest feature that the density has along this one.</summary>
    public double Finest(int account, int dimension) => Dimensions == 1
        ? Factors[account, 0]
        : dimension == 1 ? Factors[account, 2] : Factors[account, 0] * Factors[account, 2] / Deviation(account, 1);

    private void Fill(int k, Observation observation, Account account)
    {
        double[] sum = observation.Sums[0];
        Means[k, 0] = account.Mean(sum);
        Factors[k, 0] = Math.Sqrt(account.Covariance(sum, sum) + observation.Noise);
        Factors[k, 2] = 1;
        if (Dimensions == 1)
        {
            return;
        }

        double[] other = observation.Sums[1];
        Means[k, 1] = account.Mean(other);
        Factors[k, 1] = account.Covariance(sum, other) / Factors[k, 0];
        Factors[k, 2] = Math.Sqrt(
            account.Covariance(other, other) + observation.Noise - (Factors[k, 1] * Factors[k, 1]));
    }
}
