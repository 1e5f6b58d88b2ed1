namespace Gatewright.Core.Stroke;

/// <summary>What a change of rig does to the stroke: each step alone, and all together.</summary>
/// <param name="Before">The stroke as it is.</param>
/// <param name="Alone">Each step on its own.</param>
/// <param name="Together">All at once.</param>
public sealed record StrokeChange(MeasuredStroke Before, IReadOnlyList<StrokeEffect> Alone, StrokeEffect Together)
{
    /// <summary>What a change does.</summary>
    /// <returns>Null where a step, alone or with the others, leaves no stroke, or none of which an uncertainty can be told, or a rig that does not hold together.</returns>
    /// <exception cref="ArgumentException">No step.</exception>
    public static StrokeChange? Of(MeasuredStroke before, IReadOnlyList<RigStep> steps)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(steps);
        if (steps.Count == 0)
        {
            throw new ArgumentException("A change needs a step.", nameof(steps));
        }

        if (Effect(before, steps) is not { } together)
        {
            return null;
        }

        var alone = new List<StrokeEffect>();
        foreach (RigStep step in steps)
        {
            if ((steps.Count == 1 ? together : Effect(before, [step])) is not { } effect)
            {
                return null;
            }

            alone.Add(effect);
        }

        return new(before, alone, together);
    }

    /// <summary>What all steps together do to a figure beyond the sum of what each does alone.</summary>
    public double Interaction(StrokeFigure figure)
    {
        double sum = Together[figure].By;
        foreach (StrokeEffect effect in Alone)
        {
            sum -= effect[figure].By;
        }

        return sum;
    }

    /// <summary>What several steps do together, where each alone is not asked about; null where they leave none, or none of which an uncertainty can be told.</summary>
    public static StrokeEffect? Effect(MeasuredStroke before, IReadOnlyList<RigStep> steps)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(steps);
        StrokeGeometry from = before.Geometry;
        if (from.Rig.After(steps) is not { } rig || StrokeGeometry.Of(rig, from.Reach, from.Points) is not { } after)
        {
            return null;
        }

        double[] u = ChangeUncertainty.Of(before, rig, steps);
        if (!Array.TrueForAll(u, double.IsFinite))
        {
            return null;
        }

        var figures = new FigureChange[u.Length];
        for (int i = 0; i < u.Length; i++)
        {
            StrokeFigure figure = StrokeFigures.All[i];
            figures[i] = new(figure, from[figure], after[figure], u[i]);
        }

        return new([.. steps], after, figures);
    }
}
