namespace Gatewright.Core.Oars;

/// <summary>The median of figures as a weighted sum of them: the middle one, or half of each of the middle two.</summary>
/// <remarks>
/// That is what makes its uncertainty plain: near the values as they are, the median moves with the middle ones alone, and what
/// all figures share it shares whole.
/// </remarks>
internal static class Median
{
    /// <summary>The weight of each figure in the median of all but one; that one's is 0.</summary>
    /// <param name="figures">The figures, at least one beside that left out.</param>
    /// <param name="without">The place of the one left out; −1 for none.</param>
    public static double[] Weights(IReadOnlyList<OarFigure> figures, int without)
    {
        var order = new List<int>(figures.Count);
        for (int i = 0; i < figures.Count; i++)
        {
            if (i != without)
            {
                order.Add(i);
            }
        }

        // Of equals in their own order, so that the same figures always give the same weights.
        order.Sort((a, b) => figures[a].Value.CompareTo(figures[b].Value) is not 0 and int by ? by : a.CompareTo(b));
        double[] weights = new double[figures.Count];
        weights[order[(order.Count - 1) / 2]] += 0.5;
        weights[order[order.Count / 2]] += 0.5;
        return weights;
    }
}
