namespace Gatewright.Core.Stroke;

/// <summary>What one wants a figure to be.</summary>
/// <param name="Figure">Which.</param>
/// <param name="Value">The value wanted, in its unit: a finish is negative beyond abeam.</param>
public readonly record struct StrokeWish(StrokeFigure Figure, double Value);

/// <summary>A way to what is wanted.</summary>
/// <param name="Steps">What to set, to the millimetre.</param>
/// <param name="After">The stroke after those.</param>
/// <param name="Minutes">What it takes at one seat.</param>
public sealed record WishAnswer(IReadOnlyList<RigStep> Steps, StrokeGeometry After, int Minutes);

/// <summary>What was found for some wishes.</summary>
/// <param name="Answers">Ways that touch the fewest measures, the least work first; none where the wishes cannot be met.</param>
/// <param name="Reachable">For a single wish: the least and most the figure can be within what is allowed.</param>
public sealed record WishFound(IReadOnlyList<WishAnswer> Answers, (double Least, double Most)? Reachable);
