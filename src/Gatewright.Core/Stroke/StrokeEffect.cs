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
