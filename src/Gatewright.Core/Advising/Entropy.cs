namespace Gatewright.Core.Advising;

/// <summary>Shannon's measure of what is not known, in bits.</summary>
public static class Entropy
{
    /// <summary>−Σ p log₂ p of probabilities that sum to 1; even odds → 1 bit.</summary>
    public static double Bits(ReadOnlySpan<double> probabilities)
    {
        double sum = 0;
        foreach (double p in probabilities)
        {
            sum += Term(p);
        }

        return sum;
    }

    internal static double Term(double p) => p > 0 ? -p * Math.Log2(p) : 0;
}
