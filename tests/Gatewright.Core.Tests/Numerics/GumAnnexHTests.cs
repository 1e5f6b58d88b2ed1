using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Numerics;

/// <summary>The worked examples of JCGM 100:2008 (GUM), Annex H, through our own propagation and least squares.</summary>
public class GumAnnexHTests
{
    /// <summary>H.1, end-gauge calibration: l = ls + d − ls (δα θ + αs δθ), all in nanometres and degrees Celsius.</summary>
    [Fact]
    public void H1_end_gauge_has_the_published_contributions_and_combined_uncertainty()
    {
        const double ls = 50_000_623;
        const double theta = -0.1;
        const double alpha = 11.5e-6;
        double[] u =
        [
            25,
            9.7,
            1e-6 / Math.Sqrt(3),
            0.05 / Math.Sqrt(3),
            2e-6 / Math.Sqrt(3),
            0.41,
        ];

        // ls, d, δα, δθ, αs, θ; the last two have no influence to first order, δα and δθ being 0.
        double[] sensitivities = [1, 1, -ls * theta, -ls * alpha, 0, 0];
        var inputs = new CovarianceMatrix(6, Diagonal(u));
        double Contribution(int i) => Math.Sqrt(inputs.Variance(Only(i, sensitivities)));

        // d's own three parts, as H.1.3.2 combines them.
        var parts = new CovarianceMatrix(3, Diagonal([5.8, 3.9, 6.7]));
        Close.To(9.7, Math.Sqrt(parts.Variance([1, 1, 1])), 0.05, "u(d)");

        // Published, Table H.1, to the digits printed there.
        Close.To(25, Contribution(0), 0.05, "ls");
        Close.To(9.7, Contribution(1), 0.05, "d");
        Close.To(2.9, Contribution(2), 0.05, "δα");
        Close.To(16.6, Contribution(3), 0.05, "δθ");
        Close.To(32, Math.Sqrt(inputs.Variance(sensitivities)), 0.5, "combined");

        // Recomputed from the printed inputs.
        Close.To(31.669, Math.Sqrt(inputs.Variance(sensitivities)), 0.0005, "combined");
        Close.To(50_000_838, ls + 215, 0.5, "l");
    }

    private static readonly double[] Volts = [5.007, 4.994, 5.005, 4.990, 4.999];
    private static readonly double[] Amperes = [0.019663, 0.019639, 0.019640, 0.019685, 0.019678];
    private static readonly double[] Radians = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

    /// <summary>H.2, Table H.2: means, their standard deviations and correlations. From memory, to the digits printed.</summary>
    [Fact]
    public void H2_observations_have_the_published_means_and_correlations()
    {
        CovarianceMatrix means = MeansOfFive();

        Close.To(4.9990, Moments.Of(Volts).Mean, 0.00005);
        Close.To(0.019661, Moments.Of(Amperes).Mean, 0.0000005);
        Close.To(1.04446, Moments.Of(Radians).Mean, 0.000005);
        Close.To([0.0032, 0.0000095, 0.00075], [means.U(0), means.U(1), means.U(2)], 0.00005);
        Close.To(-0.36, means.Correlation(0, 1), 0.005);
        Close.To(0.86, means.Correlation(0, 2), 0.005);
        Close.To(-0.65, means.Correlation(1, 2), 0.005);
    }

    /// <summary>H.2, Table H.3: resistance, reactance and impedance from the means and their full covariance.</summary>
    [Fact]
    public void H2_results_have_the_published_values_uncertainties_and_correlations()
    {
        double v = Moments.Of(Volts).Mean;
        double i = Moments.Of(Amperes).Mean;
        (double sin, double cos) = Math.SinCos(Moments.Of(Radians).Mean);
        double z = v / i;
        double[] jacobian =
        [
            cos / i, -z * cos / i, -z * sin,
            sin / i, -z * sin / i, z * cos,
            1 / i, -z / i, 0,
        ];
        CovarianceMatrix results = MeansOfFive().Propagate(3, jacobian);

        Close.To([127.732, 219.847, 254.260], [z * cos, z * sin, z], 0.0005);

        // Published 0.071, 0.295 and 0.236; the second is 0.2956 in full: the table's inputs were rounded before.
        Close.To(0.071, results.U(0), 0.0005);
        Close.To(0.295, results.U(1), 0.001);
        Close.To(0.236, results.U(2), 0.0005);
        Close.To([0.071071, 0.295582, 0.236336], [results.U(0), results.U(1), results.U(2)], 5e-7, "u recomputed in full");
        Close.To(-0.588, results.Correlation(0, 1), 0.0005);
        Close.To(-0.485, results.Correlation(0, 2), 0.0005);
        Close.To(0.993, results.Correlation(1, 2), 0.0005);
        Close.To(results.Correlation(2, 1), results.Correlation(1, 2), 0);
    }

    /// <summary>H.3, calibration of a thermometer: b = y₁ + y₂ (t − 20).</summary>
    [Fact]
    public void H3_straight_line_has_the_published_coefficients_and_prediction()
    {
        double[] t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
        double[] b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];
        LeastSquaresFit fit = LeastSquares.Fit([.. t.SelectMany(x => (double[])[1, x - 20])], 2, b);

        // To the digits printed.
        Close.To(-0.1712, fit.Coefficients[0], 0.00005);
        Close.To(0.0029, fit.U(0), 0.00005);
        Close.To(0.00218, fit.Coefficients[1], 0.000005);
        Close.To(0.00067, fit.U(1), 0.000005);
        Close.To(-0.930, fit.Cofactors.Correlation(0, 1), 0.0005);
        Close.To(0.0035, fit.ResidualSd, 0.00005);
        Assert.Equal(9, fit.DegreesOfFreedom);

        double[] at30 = [1, 10];
        Close.To(-0.1494, fit.Coefficients[0] + (10 * fit.Coefficients[1]), 0.00005);
        Close.To(0.0041, fit.ResidualSd * Math.Sqrt(fit.Cofactors.Variance(at30)), 0.00005);
    }

    /// <summary>The covariance matrix of the means of five simultaneous observations (JCGM 100:2008, 5.2.3, equation 17).</summary>
    private static CovarianceMatrix MeansOfFive()
    {
        double[][] columns = [Volts, Amperes, Radians];
        double[] rows =
        [
            .. from one in columns
               from other in columns
               select one.Zip(other, (x, y) => (x - one.Average()) * (y - other.Average())).Sum() / (5 * 4),
        ];
        return new(3, rows);
    }

    private static double[] Diagonal(double[] u)
    {
        double[] rows = new double[u.Length * u.Length];
        for (int i = 0; i < u.Length; i++)
        {
            rows[(i * u.Length) + i] = u[i] * u[i];
        }

        return rows;
    }

    private static double[] Only(int index, double[] sensitivities) => [.. sensitivities.Select((c, i) => i == index ? c : 0)];
}
