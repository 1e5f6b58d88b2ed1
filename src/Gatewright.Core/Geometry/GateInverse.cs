using Gatewright.Core.Numerics;

namespace Gatewright.Core.Geometry;

/// <summary>The inverse of the geometry: which gate and pin show these pitches.</summary>
public static class GateInverse
{
    private const int Unknowns = 3;
    private const int MostSteps = 50;

    /// <summary>
    /// Gate pitch and pin leans from exact pitches at three or more oar angles, on a hull whose attitude is known;
    /// with more than three, the least-squares answer. No prior is used: this is arithmetic, not diagnosis.
    /// </summary>
    /// <remarks>
    /// Gauss–Newton on the exact geometry with the first-order slopes as Jacobian; each step leaves an error
    /// about a tenth as large, so twenty steps reach rounding error from anywhere in the trade's range.
    /// </remarks>
    /// <exception cref="ArgumentException">Fewer than three distinct oar angles, or no gate shows these pitches.</exception>
    public static GateState Solve(
        IReadOnlyList<(OarAngle At, Pitch Pitch)> pitches, Side side, HullAttitude hull = default, Lie lie = Lie.Upright)
    {
        ArgumentNullException.ThrowIfNull(pitches);
        if (pitches.Select(p => p.At).Distinct().Count() < Unknowns)
        {
            throw new ArgumentException(
                "A gate and its pin are three unknowns: pitches at three different oar angles are needed.", nameof(pitches));
        }

        double[] design = Design(pitches, side, lie);
        double[] state = [0, 0, 0];
        for (int step = 0; step < MostSteps; step++)
        {
            double[] left = [.. pitches.Select(p => p.Pitch.Degrees - At(p.At).Degrees)];
            IReadOnlyList<double> change = LeastSquares.Fit(design, Unknowns, left).Coefficients;
            for (int i = 0; i < Unknowns; i++)
            {
                state[i] += change[i];
            }

            if (state.Any(part => !(Math.Abs(part) < 45)))
            {
                break;
            }

            if (change.All(part => Math.Abs(part) < 1e-12))
            {
                return State();
            }
        }

        throw new ArgumentException("No gate with leans within 45° shows these pitches.", nameof(pitches));

        GateState State() => GateState.FromDegrees(state[0], state[1], state[2]);
        Pitch At(OarAngle at) => PitchGeometry.At(at, State(), side, hull, lie);
    }

    private static double[] Design(IReadOnlyList<(OarAngle At, Pitch Pitch)> pitches, Side side, Lie lie)
    {
        double[] design = new double[pitches.Count * Unknowns];
        for (int row = 0; row < pitches.Count; row++)
        {
            PitchSlopes slopes = PitchSlopes.At(pitches[row].At, side, lie);
            design[(row * Unknowns) + 0] = 1;
            design[(row * Unknowns) + 1] = slopes.Aft;
            design[(row * Unknowns) + 2] = slopes.Out;
        }

        return design;
    }
}
