using Gatewright.Core.Numerics;

namespace Gatewright.Core.Geometry;

/// <summary>The inverse of the geometry: which gate and pin show these pitches.</summary>
public static class GateInverse
{
    private const int Unknowns = 3;
    private const int MostSteps = 50;

    /// <summary>Degrees: a slope taken over so much is right to ten figures.</summary>
    private const double SlopeStep = 1e-3;

    /// <summary>Degrees: each step squares the error, so that what is left after one so small is rounding.</summary>
    private const double LastStep = 1e-9;

    /// <summary>
    /// Gate pitch and pin leans from exact pitches at three or more oar angles, on a hull whose attitude is known;
    /// with more than three, the least-squares answer. No prior is used: this is arithmetic, not diagnosis.
    /// </summary>
    /// <remarks>
    /// Gauss–Newton on the exact geometry from an upright pin, the slopes taken anew at every step: with the first-order
    /// slopes instead, three oar angles within some degrees of each other never settle. Three angles 30° apart give
    /// back the gate to 1e-12°, three that are 1° apart to 1e-10°. The program itself diagnoses and never asks this: it stands
    /// here as the inverse that docs/method.md tells, and by it the rules of common practice about a pin are held.
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

        double[] state = [0, 0, 0];
        for (int step = 0; step < MostSteps && state.All(part => Math.Abs(part) < 45); step++)
        {
            double[] left = [.. pitches.Select(p => p.Pitch.Degrees - Shown(p.At, state))];
            IReadOnlyList<double> change = LeastSquares.Fit(Design(state), Unknowns, left).Coefficients;
            state = [.. state.Zip(change, (part, more) => part + more)];
            if (change.All(part => Math.Abs(part) < LastStep))
            {
                return GateState.FromDegrees(state[0], state[1], state[2]);
            }
        }

        throw new ArgumentException("No gate with leans within 45° shows these pitches.", nameof(pitches));

        double Shown(OarAngle at, double[] gate) =>
            PitchGeometry.At(at, GateState.FromDegrees(gate[0], gate[1], gate[2]), side, hull, lie).Degrees;

        double[] Design(double[] about)
        {
            double[] design = new double[pitches.Count * Unknowns];
            for (int column = 0; column < Unknowns; column++)
            {
                double[] less = [.. about];
                double[] more = [.. about];
                less[column] -= SlopeStep;
                more[column] += SlopeStep;
                for (int row = 0; row < pitches.Count; row++)
                {
                    OarAngle at = pitches[row].At;
                    design[(row * Unknowns) + column] = (Shown(at, more) - Shown(at, less)) / (2 * SlopeStep);
                }
            }

            return design;
        }
    }
}
