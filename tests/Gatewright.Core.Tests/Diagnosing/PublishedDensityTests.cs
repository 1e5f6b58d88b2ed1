using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>Published figures for the two things the diagnosis is made of: a normal density, and a normal update.</summary>
public sealed class PublishedDensityTests
{
    private static readonly double[] Mean = [1, 3, 2];
    private static readonly double[] Covariance = [1, 2, 0, 2, 5, 0.5, 0, 0.5, 3];

    /// <summary>
    /// The reference output of R's package mnormt (its own tests): the density at (x, 3x − 2, x + cos(3x − 2)).
    /// </summary>
    public static TheoryData<double, double> Densities => new()
    {
        { 0.0, 0.0002214706 },
        { 0.5, 0.0013819953 },
        { 1.0, 0.0049138692 },
        { 1.5, 0.0103803050 },
        { 2.0, 0.0140250800 },
    };

    [Theory]
    [MemberData(nameof(Densities))]
    public void The_density_that_weighs_a_story_is_the_published_one(double x, double expected)
    {
        double[] deviation = [x - Mean[0], (3 * x) - 2 - Mean[1], x + Math.Cos((3 * x) - 2) - Mean[2]];

        // Printed to ten decimals, so right to half of the last.
        Assert.Equal(expected, Math.Exp(GaussianDensity.Log(deviation, new CovarianceMatrix(3, Covariance))), 5.1e-11);
    }

    /// <summary>The other tests hold the diagnosis against this density.</summary>
    [Theory]
    [MemberData(nameof(Densities))]
    public void The_density_that_the_tests_compare_with_is_the_published_one(double x, double expected)
    {
        var deviation = Vector<double>.Build.DenseOfArray([x - Mean[0], (3 * x) - 2 - Mean[1], x + Math.Cos((3 * x) - 2) - Mean[2]]);
        Assert.Equal(expected, Math.Exp(DenseModel.LogDensity(deviation, Matrix<double>.Build.DenseOfRowMajor(3, 3, Covariance))), 5.1e-11);
    }

    /// <summary>
    /// Eight schools, completely pooled: Gelman et al., Bayesian Data Analysis, 3rd edition, section 5.5 and Table 5.2: mean
    /// 7.7, variance 16.6 (recomputed: 7.68562 and 16.58053).
    /// </summary>
    /// <remarks>
    /// Here one unknown, a hull's rise to the bow about which nothing is known, is seen in the leans of eight upright pins,
    /// each by a gauge of its own repeatability. The figures are not degrees that a boat could have, which a linear model
    /// does not mind.
    /// </remarks>
    [Fact]
    public void Readings_of_one_unknown_pool_to_the_published_mean_and_variance()
    {
        double[] effects = [28, 8, -3, 7, -1, 1, 18, 12];
        double[] deviations = [15, 10, 16, 11, 9, 11, 10, 18];
        DiagnosingSettings settings = DiagnosingSettings.Default with
        {
            Measuring = MeasuringSettings.Default with { LevelReadU = Angle.FromDegrees(1e5) },
            Spreads = Spreads.Default with { HealthyLean = Angle.Zero },
            Chances = new() { GatePitch = 0, PinAft = 0, PinOut = 0, Rigger = 0, HullLevel = 0, GaugeZero = 0 },
        };
        Reading[] readings = [.. effects.Select((effect, i) => Boats.Read(
            ReadItem.PinAft,
            Boats.Gate(i + 1),
            effect,
            gauge: new("gauge", Angle.Zero, Angle.FromDegrees(deviations[i]), GaugeZero.Assumed(Angle.Zero))))];

        Estimate rise = Boats.Diagnose(Boats.Boat("8+", readings), settings: settings).Levels.Single().BowHigh;

        // A prior of 1e5 in place of none moves both by their own 2e-9th part; the figures are printed to five decimals.
        Assert.Equal(7.68562, rise.Value.Degrees, 1e-5);
        Assert.Equal(16.58053, rise.U.Degrees * rise.U.Degrees, 1e-5);
    }
}
