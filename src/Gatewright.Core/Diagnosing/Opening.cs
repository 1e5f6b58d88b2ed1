namespace Gatewright.Core.Diagnosing;

/// <summary>
/// What a cause does to the model: the unknowns whose prior it opens wide, and by how much.
/// </summary>
/// <param name="Part">The cause.</param>
/// <param name="Unknowns">Where they stand in the state.</param>
/// <param name="Variances">The variance added to each.</param>
/// <param name="LogOdds">Its prior odds, as a logarithm.</param>
internal sealed record Opening(CausePart Part, int[] Unknowns, double[] Variances, double LogOdds);
