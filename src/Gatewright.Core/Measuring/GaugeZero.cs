using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>What a gauge shows on a face that is plumb, and how that is known.</summary>
/// <remarks>It is shared by every reading the gauge takes, so it drops out of the difference between two of them.</remarks>
/// <param name="Estimate">The zero; a reading is too high by its value.</param>
/// <param name="IsChecked">Whether a reversal found it, or it is taken to be none.</param>
public readonly record struct GaugeZero(Estimate Estimate, bool IsChecked)
{
    /// <summary>A zero of 0 that nobody has checked.</summary>
    public static GaugeZero Assumed(Angle u) => new(new(Angle.Zero, u), false);

    /// <summary>
    /// The zero found by reading one face, turning the gauge end for end on it, and reading it again.
    /// </summary>
    /// <remarks>
    /// Turned round, the gauge shows the face's angle with its sign changed, and its own zero with the same sign: half
    /// the sum is the zero, half the difference the face. Readings of +2.3 and −1.9 → zero 0.2, face 2.1.
    /// </remarks>
    /// <param name="first">The first reading.</param>
    /// <param name="turned">The reading with the gauge turned end for end, with its own sign.</param>
    /// <param name="u">How well such a check finds the zero.</param>
    public static GaugeZero FromReversal(Angle first, Angle turned, Angle u) =>
        new(new(0.5 * (first + turned), u), true);
}
