namespace Gatewright.Core.Rig;

/// <summary>
/// A figure of the rig as it is known, in the unit its measure is kept in: centimetres, of an angle degrees.
/// </summary>
/// <param name="Value">The best value.</param>
/// <param name="U">The standard uncertainty, 0 or more: one standard deviation (JCGM 100:2008, 2.3.1).</param>
public readonly record struct RigEstimate(double Value, double U)
{
    /// <summary>The standard uncertainty, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 0 or NaN.</exception>
    public double U { get; init => field = NotNegative(value); } = NotNegative(U);

    /// <summary>"86.5 ± 0.25" in the invariant culture.</summary>
    public override string ToString() => FormattableString.Invariant($"{Value:0.0##} ± {U:0.0#}");

    private static double NotNegative(double u) => u >= 0
        ? u
        : throw new ArgumentOutOfRangeException(nameof(u), u, "A standard uncertainty must be 0 or more.");
}
