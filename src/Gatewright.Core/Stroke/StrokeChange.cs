namespace Gatewright.Core.Stroke;

/// <summary>What a figure was and becomes.</summary>
/// <param name="Figure">Which.</param>
/// <param name="Before">In its unit.</param>
/// <param name="After">In its unit.</param>
/// <param name="U">The standard uncertainty of the difference, in its unit: far below that of either.</param>
public sealed record FigureChange(StrokeFigure Figure, double Before, double After, double U)
{
    /// <summary>After less before.</summary>
    public double By => After - Before;

    /// <summary>The same in hundredths of what it was.</summary>
    public double Percent => 100 * By / Before;
}

/// <summary>What one or several steps do to a stroke.</summary>
/// <param name="Steps">The steps.</param>
/// <param name="After">The stroke after them.</param>
/// <param name="Figures">Every figure, in the order of <see cref="StrokeFigures.All"/>.</param>
public sealed record StrokeEffect(IReadOnlyList<RigStep> Steps, StrokeGeometry After, IReadOnlyList<FigureChange> Figures)
{
    /// <summary>What becomes of a figure.</summary>
    public FigureChange this[StrokeFigure figure] => Figures[(int)figure];
}

/// <summary>What a change of rig does to the stroke: each step alone, and all together.</summary>
/// <param name="Before">The stroke as it is.</param>
/// <param name="Alone">Each step on its own.</param>
/// <param name="Together">All at once.</param>
public sealed record StrokeChange(MeasuredStroke Before, IReadOnlyList<StrokeEffect> Alone, StrokeEffect Together)
{
    /// <summary>How well a step is set: the new place is measured as the old one was, with the same tape. 0.1 cm, ours.</summary>
    private const double StepU = 0.1;

    /// <summary>What a change does.</summary>
    /// <returns>Null where a step, alone or with the others, leaves no stroke, or a rig that does not hold together.</returns>
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

    /// <summary>What several steps do together, where each alone is not asked about; null where they leave no stroke.</summary>
    public static StrokeEffect? Effect(MeasuredStroke before, IReadOnlyList<RigStep> steps)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(steps);
        StrokeGeometry from = before.Geometry;
        if (Moved(from.Rig, steps) is not { } rig || StrokeGeometry.Of(rig, from.Reach, from.Points) is not { } after)
        {
            return null;
        }

        var inputs = new StrokeInputs(before.Seat, from.Reach, from.Points);
        int count = StrokeFigures.All.Count;
        double[] old = new double[count];
        double[] u = inputs.U(count, Difference);
        double[] ofSteps = SetU(inputs, rig, from, steps);
        var figures = new FigureChange[count];
        for (int i = 0; i < count; i++)
        {
            StrokeFigure figure = StrokeFigures.All[i];
            figures[i] = new(figure, from[figure], after[figure], Math.Sqrt((u[i] * u[i]) + ofSteps[i]));
        }

        return new([.. steps], after, figures);

        bool Difference(SeatRig at, Reach reach, double[] into)
        {
            if (Moved(at, steps) is not { } moved || !inputs.Figures(moved, reach, into) || !inputs.Figures(at, reach, old))
            {
                return false;
            }

            for (int i = 0; i < into.Length; i++)
            {
                into[i] -= old[i];
            }

            return true;
        }
    }

    /// <summary>The variance of each figure that comes of setting the steps no better than one can.</summary>
    private static double[] SetU(StrokeInputs inputs, SeatRig rig, StrokeGeometry from, IReadOnlyList<RigStep> steps)
    {
        const double Half = 0.01;
        double[] more = new double[StrokeFigures.All.Count];
        double[] less = new double[more.Length];
        double[] variances = new double[more.Length];
        foreach (RigStep step in steps)
        {
            bool isDefined = inputs.Figures(Shifted(rig, step, Half), from.Reach, more)
                & inputs.Figures(Shifted(rig, step, -Half), from.Reach, less);
            for (int i = 0; i < variances.Length; i++)
            {
                double slope = isDefined ? (more[i] - less[i]) / (2 * Half) : double.PositiveInfinity;
                variances[i] += slope * slope * StepU * StepU;
            }
        }

        return variances;
    }

    private static SeatRig Shifted(SeatRig rig, RigStep step, double centimetres) =>
        rig.With(step.Measure, rig.Get(step.Measure) + Core.Rig.Length.FromCentimetres(centimetres));

    /// <summary>A rig after several steps; null where it would not hold together.</summary>
    public static SeatRig? Moved(SeatRig rig, IReadOnlyList<RigStep> steps)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(steps);
        (double width, double inboard, double length, double through) =
            (rig.Width.Centimetres, rig.Inboard.Centimetres, rig.OarLength.Centimetres, rig.WorkThrough.Centimetres);
        foreach (RigStep step in steps)
        {
            switch (step.Measure)
            {
                case Core.Rig.RigMeasure.Inboard:
                    inboard += step.By.Centimetres;
                    break;
                case Core.Rig.RigMeasure.OarLength:
                    length += step.By.Centimetres;
                    break;
                case Core.Rig.RigMeasure.WorkThrough:
                    through += step.By.Centimetres;
                    break;
                default:
                    width += step.By.Centimetres;
                    break;
            }
        }

        return width > 0 && inboard > 0 && length > inboard
            ? SeatRig.FromCentimetres(rig.Rowing, width, inboard, length, through)
            : null;
    }
}
