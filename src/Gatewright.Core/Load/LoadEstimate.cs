namespace Gatewright.Core.Load;

/// <summary>A force in newtons or a moment in newton metres, as it is known.</summary>
/// <param name="Value">The best value.</param>
/// <param name="U">
/// The standard uncertainty that comes of gates, sleeves, rigs and arcs, 0 or more; that of the model is not in it.
/// </param>
public readonly record struct LoadEstimate(double Value, double U)
{
    /// <summary>As it is with so many times the pull; the factor is above 0.</summary>
    internal LoadEstimate Times(double factor) => new(factor * Value, factor * U);
}
