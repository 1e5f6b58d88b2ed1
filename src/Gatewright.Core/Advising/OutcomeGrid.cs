namespace Gatewright.Core.Advising;

/// <summary>An even grid along one direction of a reading's outcomes, wide enough for every account.</summary>
/// <param name="From">Its first point.</param>
/// <param name="Width">From one point to the next.</param>
/// <param name="Points">How many; odd, so that every second one is a grid of its own.</param>
internal readonly record struct OutcomeGrid(double From, double Width, int Points)
{
    /// <summary>How far out it goes, in deviations: 7 in a million of an account lie beyond.</summary>
    private const double Reach = 4.5;

    /// <summary>An account lighter than this may be narrower than the grid resolves.</summary>
    private const double WorthResolving = 1e-4;

    /// <summary>Finer than this is not worth its time.</summary>
    private const int MostPoints = 401;

    /// <summary>A single point: the direction that is not there.</summary>
    public static OutcomeGrid Single { get; } = new(0, 0, 1);

    /// <summary>The grid along a dimension, its width a share of the narrowest feature.</summary>
    /// <param name="outcomes">How the outcomes are distributed.</param>
    /// <param name="dimension">Which dimension.</param>
    /// <param name="step">The share.</param>
    /// <param name="widths">Of each account the narrowest feature within it, as a share of its deviation: 1 at most.</param>
    public static OutcomeGrid Along(OutcomeModel outcomes, int dimension, double step, double[] widths)
    {
        double from = double.PositiveInfinity;
        double to = double.NegativeInfinity;
        double finest = double.PositiveInfinity;
        for (int k = 0; k < outcomes.Weights.Length; k++)
        {
            double reach = Reach * outcomes.Deviation(k, dimension);
            from = Math.Min(from, outcomes.Means[k, dimension] - reach);
            to = Math.Max(to, outcomes.Means[k, dimension] + reach);
            if (outcomes.Weights[k] >= WorthResolving)
            {
                finest = Math.Min(finest, outcomes.Finest(k, dimension) * widths[k]);
            }
        }

        int points = ((int)Math.Min(MostPoints / 2, Math.Ceiling((to - from) / (2 * step * finest))) * 2) + 1;
        return new(from, (to - from) / (points - 1), points);
    }

    public double this[int point] => From + (point * Width);
}
