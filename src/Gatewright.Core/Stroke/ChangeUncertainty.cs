namespace Gatewright.Core.Stroke;

/// <summary>
/// How well a change of a stroke's figures is known: what rig and reach are off by moves both before and after, and mostly drops out;
/// how well the steps are set stays.
/// </summary>
internal static class ChangeUncertainty
{
    /// <summary>How well a step is set: the new place is measured as the old one was, with the same tape. 0.1 cm, ours.</summary>
    private const double StepU = 0.1;

    // Central differences: small beside what bends any of the figures, large beside rounding.
    private const double Half = 0.01;

    /// <summary>The standard uncertainty of each figure's difference, in the order of <see cref="StrokeFigures.All"/>.</summary>
    /// <param name="before">The stroke as it is.</param>
    /// <param name="after">The rig after the steps.</param>
    /// <param name="steps">The steps, taken together.</param>
    public static double[] Of(MeasuredStroke before, SeatRig after, IReadOnlyList<RigStep> steps)
    {
        StrokeGeometry from = before.Geometry;
        var inputs = new StrokeInputs(before.Seat, from.Reach, from.Points);
        double[] old = new double[StrokeFigures.All.Count];
        double[] u = inputs.U(old.Length, Difference);
        double[] ofSteps = OfSteps(inputs, after, from.Reach, steps);
        for (int i = 0; i < u.Length; i++)
        {
            u[i] = Math.Sqrt((u[i] * u[i]) + ofSteps[i]);
        }

        return u;

        bool Difference(SeatRig at, Reach reach, double[] into)
        {
            if (at.After(steps) is not { } moved || !inputs.Figures(moved, reach, into) || !inputs.Figures(at, reach, old))
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
    private static double[] OfSteps(StrokeInputs inputs, SeatRig rig, Reach reach, IReadOnlyList<RigStep> steps)
    {
        double[] more = new double[StrokeFigures.All.Count];
        double[] less = new double[more.Length];
        double[] variances = new double[more.Length];
        foreach (RigStep step in steps)
        {
            bool isDefined = inputs.Figures(Shifted(rig, step, Half), reach, more)
                & inputs.Figures(Shifted(rig, step, -Half), reach, less);
            for (int i = 0; i < variances.Length; i++)
            {
                double slope = isDefined ? (more[i] - less[i]) / (2 * Half) : double.PositiveInfinity;
                variances[i] += slope * slope * StepU * StepU;
            }
        }

        return variances;
    }

    private static SeatRig Shifted(SeatRig rig, RigStep step, double centimetres) =>
        rig.With(step.Measure, rig.Get(step.Measure) + Rig.Length.FromCentimetres(centimetres));
}
