namespace Gatewright.Core.Advising;

/// <summary>
/// A reading not yet taken, as a gate's view has it: one or two sums of its unknowns, each with noise of its own.
/// </summary>
/// <param name="Sums">Each sum: the weights of the view's unknowns.</param>
/// <param name="Noise">The variance of the noise of each.</param>
internal sealed record Observation(IReadOnlyList<double[]> Sums, double Noise)
{
    public int Dimensions => Sums.Count;

    /// <summary>A direct look at unknowns themselves.</summary>
    public static Observation Direct(GateView view, double u, params int[] unknowns) =>
        new([.. unknowns.Select(unknown => Unit(view, unknown))], u * u);

    /// <summary>One of its two sums by itself.</summary>
    public Observation Along(int dimension) => this with { Sums = [Sums[dimension]] };

    private static double[] Unit(GateView view, int unknown)
    {
        double[] unit = new double[view.Accounts[0].Means.Length];
        unit[unknown] = 1;
        return unit;
    }
}
