using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Advising;

/// <summary>
/// A reading not yet taken, as the model sees it: one or two sums of unknowns, each with noise of its own.
/// </summary>
/// <param name="Choice">The reading.</param>
/// <param name="Sums">Each sum: where its unknowns stand in the state, and their weights.</param>
/// <param name="Noise">The variance of the noise of each.</param>
internal sealed record Observation(ReadingChoice Choice, IReadOnlyList<(int[] At, double[] Weights)> Sums, double Noise)
{
    public int Dimensions => Sums.Count;

    /// <summary>A further reading of a gate, pin or sleeve, taken as the others were.</summary>
    public static Observation Of(ReadingChoice choice, Reading reading, LinearModel model)
    {
        double[] line = new double[model.Layout.Size];
        model.FillRow(reading, line);
        int[] at = [.. Enumerable.Range(0, line.Length).Where(i => line[i] != 0)];
        double[] weights = [.. at.Select(i => line[i])];
        return new(choice, [(at, weights)], ReadingNoise.VarianceOf(reading, model.Settings.Measuring));
    }

    /// <summary>A direct look at unknowns themselves.</summary>
    public static Observation Direct(ReadingChoice choice, double u, params int[] unknowns)
    {
        double[] one = [1];
        return new(choice, [.. unknowns.Select(k => (new[] { k }, one))], u * u);
    }
}
