namespace Gatewright.Core.Diagnosing;

/// <summary>
/// What a cause does to the model: the unknowns whose prior it opens, by how much, and where it moves them.
/// </summary>
/// <param name="Part">The cause.</param>
/// <param name="Unknowns">Where they stand in the state, none twice.</param>
/// <param name="Spreads">The standard deviation added to each, in quadrature.</param>
/// <param name="Shifts">How far it moves the prior mean of each; empty for a cause that says no direction.</param>
/// <param name="LogOdds">Its prior odds, as a logarithm.</param>
internal sealed record Opening(CausePart Part, int[] Unknowns, double[] Spreads, double[] Shifts, double LogOdds);
