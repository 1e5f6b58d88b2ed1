using Gatewright.Core.Geometry;

namespace Gatewright.Core.Simulating;

/// <summary>
/// Random numbers as a simulation needs them, made from even ones that it is given: Core draws none itself, so the
/// same numbers always make the same boats.
/// </summary>
/// <param name="even">The next number, spread evenly from 0 (included) to 1 (not included).</param>
public sealed class Draws(Func<double> even)
{
    /// <summary>True with a probability.</summary>
    public bool Happens(double probability) => even() < probability;

    /// <summary>One of 0 to <paramref name="count"/> − 1, each as likely.</summary>
    public int Below(int count) => (int)(even() * count);

    /// <summary>One of several, each as likely.</summary>
    public T OneOf<T>(IReadOnlyList<T> several)
    {
        ArgumentNullException.ThrowIfNull(several);
        return several[Below(several.Count)];
    }

    /// <summary>A normal angle about 0.</summary>
    /// <remarks>
    /// By two even numbers, √(−2 ln u) cos 2πv (Box and Muller, A note on the generation of random normal deviates,
    /// Annals of Mathematical Statistics 29, 1958); their second, independent value is let go, so that nothing is kept
    /// from one draw to the next.
    /// </remarks>
    /// <param name="deviation">Its standard deviation.</param>
    public Angle Normal(Angle deviation)
    {
        double length = Math.Sqrt(-2 * Math.Log(1 - even()));
        return Angle.FromDegrees(deviation.Degrees * length * Math.Cos(2 * Math.PI * even()));
    }

    /// <summary>A normal number about 0 of deviation 1.</summary>
    public double StandardNormal() => Normal(Angle.FromDegrees(1)).Degrees;
}
