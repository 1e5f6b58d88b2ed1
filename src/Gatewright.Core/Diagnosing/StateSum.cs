namespace Gatewright.Core.Diagnosing;

/// <summary>
/// A sum of unknowns, each times its weight, made ready to be asked of every story: a gate's lean, or the pitch at a
/// station.
/// </summary>
/// <remarks>
/// If nothing is wrong it has this mean and variance. A story throws some unknowns, and the sum goes with them by
/// (I − M P) w: where nothing was read, an unknown goes the whole way and no other follows; where it was read well,
/// the readings hold it.
/// </remarks>
internal sealed class StateSum
{
    public StateSum(EvidenceKernel kernel, ReadOnlySpan<int> at, ReadOnlySpan<double> weights)
    {
        Follows = new double[kernel.Model.Layout.Size];
        for (int i = 0; i < at.Length; i++)
        {
            Mean += weights[i] * kernel.Mean(at[i]);
            for (int j = 0; j < at.Length; j++)
            {
                Variance += weights[i] * weights[j] * kernel.Covariance(at[i], at[j]);
            }

            for (int thrown = 0; thrown < Follows.Length; thrown++)
            {
                Follows[thrown] += weights[i] * kernel.Follows(at[i], thrown);
            }
        }
    }

    /// <summary>Its mean given the readings, if nothing is wrong.</summary>
    public double Mean { get; }

    /// <summary>Its variance given the readings, if nothing is wrong.</summary>
    public double Variance { get; }

    /// <summary>How far it goes with each unknown that is thrown by 1.</summary>
    public double[] Follows { get; }
}
