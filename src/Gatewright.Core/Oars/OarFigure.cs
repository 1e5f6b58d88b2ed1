namespace Gatewright.Core.Oars;

/// <summary>A part of a figure's error that other figures may share: of one key it is one and the same error.</summary>
/// <param name="Key">Which error: a session's level, a gauge's zero.</param>
/// <param name="Slope">How the figure follows it.</param>
/// <param name="U">Its standard uncertainty.</param>
public readonly record struct SharedError(string Key, double Slope, double U);

/// <summary>
/// A figure of an oar as it is known, in its item's unit, with its errors kept apart: its own, and those it shares with other
/// oars, which drop out of the difference.
/// </summary>
/// <param name="Value">The best value.</param>
/// <param name="OwnU">The standard uncertainty that is its own.</param>
/// <param name="Shared">What it shares.</param>
/// <param name="Day">The day it was read; null for what was only stated.</param>
public sealed record OarFigure(double Value, double OwnU, IReadOnlyList<SharedError> Shared, DateOnly? Day = null)
{
    /// <summary>The standard uncertainty of the figure by itself.</summary>
    public double U => Combined([this], [1]).U;

    /// <summary>A sum of figures with weights, u with what they share taken together (JCGM 100:2008, equation 13).</summary>
    public static (double Value, double U) Combined(IReadOnlyList<OarFigure> figures, IReadOnlyList<double> weights)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(weights);
        double value = 0;
        double variance = 0;
        var shared = new Dictionary<string, (double Slope, double U)>();
        for (int i = 0; i < figures.Count; i++)
        {
            value += weights[i] * figures[i].Value;
            variance += Square(weights[i] * figures[i].OwnU);
            foreach (SharedError error in figures[i].Shared)
            {
                // Where two do not agree how large it is, the larger: it is the safer one.
                (double slope, double u) = shared.GetValueOrDefault(error.Key);
                shared[error.Key] = (slope + (weights[i] * error.Slope), Math.Max(u, error.U));
            }
        }

        foreach ((double slope, double u) in shared.Values)
        {
            variance += Square(slope * u);
        }

        return (value, Math.Sqrt(variance));
    }

    private static double Square(double x) => x * x;
}
