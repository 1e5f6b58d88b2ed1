using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>
/// Evidence by its definition, the density of the readings averaged over what a cause may have done, summed on a grid.
/// </summary>
/// <remarks>
/// Everything is worked out here from first principles for gates so few that the readings' covariance can be written down.
/// The trapezium rule on a smooth integrand that vanishes at both ends converges faster than any power of its step: 400
/// steps over ±8 standard deviations reach rounding error.
/// </remarks>
public sealed class QuadratureTests
{
    private const int Steps = 400;
    private const double Reach = 8;

    private static readonly double SinCatch = Math.Sin(55 * Math.PI / 180);
    private static readonly double CosCatch = Math.Cos(55 * Math.PI / 180);

    /// <summary>What two readings of one boat share: level 0.1 each way, gauge's zero 0.2; and the noise of one.</summary>
    private static readonly double HeldCatch = Math.Pow(0.5 * 5 * Math.PI / 180, 2);
    private static readonly double HeldAbeam = Math.Pow(0.5 * 1 * Math.PI / 180, 2);
    private const double Noise = (0.5 * 0.5 / 12) + (0.2 * 0.2);

    [Theory]
    [InlineData(Cause.GatePitch, 1.0, 2.0)]
    [InlineData(Cause.PinAft, 0.573576436351046, 2.5)]
    [InlineData(Cause.PinOut, 0.819152044288992, 2.5)]
    public void One_reading_and_a_cause_that_opens_one_unknown(Cause cause, double slope, double spread)
    {
        const double Read = 1.5;
        double variance = (0.09 * (1 + (CosCatch * CosCatch) + (SinCatch * SinCatch))) + 0.01 + 0.04 + Noise + HeldCatch;
        double expected = Integral(spread, d => Density(Read - 4 - (slope * d), variance));
        AssertEvidence(expected, Boat("2-", Boats.Read(Port(2), Station.Catch, Read)), new CausePart(cause, Port(2)));
    }

    [Fact]
    public void One_reading_and_a_rigger_that_opens_two()
    {
        const double Read = 6.5;
        double variance = (0.09 * 2) + 0.01 + 0.04 + Noise + HeldCatch;
        double expected = Integral(2.5, a => Integral(2.5, o => Density(Read - 4 - (CosCatch * a) - (SinCatch * o), variance)));
        AssertEvidence(expected, Boat("2-", Boats.Read(Port(2), Station.Catch, Read)), new CausePart(Cause.Rigger, Port(2)));
    }

    [Fact]
    public void Two_gates_and_a_cause_on_each()
    {
        // Both gates abeam: each has γ + a, a hull's rise of 0.1 and a zero of 0.2 in common.
        const double First = 2.5;
        const double Second = 6;
        double own = (0.09 * 2) + Noise + HeldAbeam;
        const double Shared = 0.01 + 0.04;
        double expected = Integral(2.0, g => Integral(2.5, a => Density(First - 4 - g, Second - 4 - a, own + Shared, Shared)));
        AssertEvidence(
            expected,
            Boat("2-", Boats.Read(Starboard(1), Station.Abeam, First), Boats.Read(Port(2), Station.Abeam, Second)),
            new CausePart(Cause.GatePitch, Starboard(1)),
            new CausePart(Cause.PinAft, Port(2)));
    }

    [Fact]
    public void One_gate_at_two_stations_and_a_hull_that_lies_otherwise()
    {
        // Catch and abeam of a gate on port, upright: the rise by cos θ, the roll by sin θ.
        const double AtCatch = 2;
        const double Abeam = 3.5;
        double catchOwn = 0.09 + (0.09 * CosCatch * CosCatch) + (0.09 * SinCatch * SinCatch)
            + (0.01 * CosCatch * CosCatch) + (0.01 * SinCatch * SinCatch) + 0.04 + Noise + HeldCatch;
        double abeamOwn = 0.09 + 0.09 + 0.01 + 0.04 + Noise + HeldAbeam;
        double shared = 0.09 + (0.09 * CosCatch) + (0.01 * CosCatch) + 0.04;
        double expected = Integral(2.0, b => Integral(2.0, r => Density(
            AtCatch - 4 - (CosCatch * b) - (SinCatch * r), Abeam - 4 - b, catchOwn, abeamOwn, shared)));
        AssertEvidence(
            expected,
            Boat("2-", Boats.Read(Port(2), Station.Catch, AtCatch), Boats.Read(Port(2), Station.Abeam, Abeam)),
            new CausePart(Cause.HullLevel));
    }

    private static void AssertEvidence(double expected, BoatReadings boat, params CausePart[] parts)
    {
        StoryWeights weights = Diagnose(boat).Weights;
        int story = Enumerable.Range(0, weights.Count)
            .Single(i => weights.Parts(i).Select(o => o.Part).ToHashSet().SetEquals(parts));
        Assert.Equal(1, Math.Exp(weights.Kernel.LogDensity + weights.Table.LogGain(story)) / expected, 1e-6);
    }

    /// <summary>∫ f(d) N(d; 0, spread²) dd.</summary>
    private static double Integral(double spread, Func<double, double> f)
    {
        double step = 2 * Reach * spread / Steps;
        double sum = 0;
        for (int i = 0; i <= Steps; i++)
        {
            double d = (i * step) - (Reach * spread);
            sum += f(d) * Density(d, spread * spread) * step;
        }

        return sum;
    }

    private static double Density(double off, double variance) => Math.Exp(-0.5 * off * off / variance) / Math.Sqrt(2 * Math.PI * variance);

    private static double Density(double one, double other, double variance, double covariance) =>
        Density(one, other, variance, variance, covariance);

    private static double Density(double one, double other, double oneVariance, double otherVariance, double covariance)
    {
        double determinant = (oneVariance * otherVariance) - (covariance * covariance);
        double form = ((otherVariance * one * one) - (2 * covariance * one * other) + (oneVariance * other * other)) / determinant;
        return Math.Exp(-0.5 * form) / (2 * Math.PI * Math.Sqrt(determinant));
    }
}
