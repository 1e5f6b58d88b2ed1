namespace Gatewright.Cli.Simulate;

/// <summary>So many of so many, and how well that share is known from a simulation of that size.</summary>
/// <param name="Hits">How many.</param>
/// <param name="Of">Of how many.</param>
internal readonly record struct Counted(int Hits, int Of)
{
    /// <summary>The share, 0 to 1.</summary>
    public double Share => Of == 0 ? 0 : Hits / (double)Of;

    /// <summary>Its standard error, √(p(1 − p)/n).</summary>
    public double Error => Of == 0 ? 0 : Math.Sqrt(Share * (1 - Share) / Of);

    /// <summary>How many of some things are so.</summary>
    public static Counted Among<T>(IReadOnlyCollection<T> all, Func<T, bool> isSo) => new(all.Count(isSo), all.Count);
}

/// <summary>A mean over boats, and its standard error.</summary>
/// <param name="Value">The mean.</param>
/// <param name="Error">The deviation of one boat over the root of how many there are.</param>
internal readonly record struct Averaged(double Value, double Error)
{
    public static Averaged Over<T>(IReadOnlyCollection<T> all, Func<T, double> of)
    {
        double mean = all.Average(of);
        double squares = all.Sum(one => Math.Pow(of(one) - mean, 2));
        return new(mean, Math.Sqrt(squares / (all.Count - 1) / all.Count));
    }
}
