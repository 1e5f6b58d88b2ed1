using Gatewright.Core.Numerics;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Numerics;

/// <summary>
/// NIST Statistical Reference Datasets, linear least squares regression: certified values of Norris, Pontius, Filip,
/// Longley and Wampler1 to Wampler5, figures as in the data files.
/// </summary>
/// <remarks>
/// A condition number κ costs log₁₀ κ of a double's 16 digits, and κ² enters with the size of what is left over. So
/// each set says how many digits it must agree in: what a backward-stable method leaves, less than one digit of slack.
/// </remarks>
public class StrdRegressionTests
{
    public static TheoryData<string> Sets => [.. All.Select(set => set.Name)];

    [Theory]
    [MemberData(nameof(Sets))]
    public void Least_squares_finds_the_certified_fit(string name)
    {
        CertifiedFit set = All.Single(s => s.Name == name);
        LeastSquaresFit fit = LeastSquares.Fit([.. set.Design.SelectMany(row => row)], set.B.Length, set.Y);

        for (int i = 0; i < set.B.Length; i++)
        {
            Digits.AtLeast(set.DigitsOfB, set.B[i], fit.Coefficients[i], $"B{i}");
            Digits.AtLeast(set.DigitsOfU, set.U[i], fit.U(i), $"standard deviation of B{i}");
        }

        Digits.AtLeast(set.DigitsOfSd, set.ResidualSd, fit.ResidualSd, "residual standard deviation");
    }

    [Fact]
    public void Every_set_is_there_whole()
    {
        // Observations as each data file states them.
        Assert.Equal(
            [("Norris", 36), ("Pontius", 40), ("Filip", 82), ("Longley", 16), ("Wampler1", 21), ("Wampler2", 21), ("Wampler3", 21), ("Wampler4", 21), ("Wampler5", 21)],
            All.Select(set => (set.Name, set.Y.Length)));
    }

    private static readonly CertifiedFit[] All =
    [
        // κ near 1e3.
        new("Norris", Polynomial("Norris", x: 1, degree: 1), Column("Norris", 0),
            [-0.262323073774029, 1.00211681802045],
            [0.232818234301152, 0.429796848199937e-03],
            0.884796396144373, DigitsOfB: 12.5, DigitsOfU: 13, DigitsOfSd: 13),

        // Loads of some millions squared beside a column of ones: κ near 1e13, but by scale alone, which costs nothing.
        new("Pontius", Polynomial("Pontius", x: 1, degree: 2), Column("Pontius", 0),
            [0.673565789473684e-03, 0.732059160401003e-06, -0.316081871345029e-14],
            [0.107938612033077e-03, 0.157817399981659e-09, 0.486652849992036e-16],
            0.205177424076185e-03, DigitsOfB: 12, DigitsOfU: 12.5, DigitsOfSd: 12.5),

        // Degree 10 on −9 to −3: κ near 1e15 as it stands and near 1e9 when its columns are scaled. The stress test.
        new("Filip", Polynomial("Filip", x: 1, degree: 10), Column("Filip", 0),
            [
                -1467.48961422980, -2772.17959193342, -2316.37108160893, -1127.97394098372, -354.478233703349,
                -75.1242017393757, -10.8753180355343, -1.06221498588947, -0.670191154593408e-01,
                -0.246781078275479e-02, -0.402962525080404e-04,
            ],
            [
                298.084530995537, 559.779865474950, 466.477572127796, 227.204274477751, 71.6478660875927,
                15.2897178747400, 2.23691159816033, 0.221624321934227, 0.142363763154724e-01,
                0.535617408889821e-03, 0.896632837373868e-05,
            ],
            0.334801051324544e-02, DigitsOfB: 7, DigitsOfU: 7, DigitsOfSd: 7.5),

        // Six economic series that rise together: κ near 5e9 as it stands, near 5e4 scaled.
        new("Longley", [.. Embedded.Table("Longley").Select(row => (double[])[1, .. row[1..]])], Column("Longley", 0),
            [
                -3482258.63459582, 15.0618722713733, -0.358191792925910e-01, -2.02022980381683, -1.03322686717359,
                -0.511041056535807e-01, 1829.15146461355,
            ],
            [
                890420.383607373, 84.9149257747669, 0.334910077722432e-01, 0.488399681651699, 0.214274163161675,
                0.226073200069370, 455.478499142212,
            ],
            304.854073561965, DigitsOfB: 12, DigitsOfU: 13, DigitsOfSd: 13),

        // Degree 5 on 0 to 20: κ near 1e4 scaled. The data are exact; nothing is left over, so what is certified as 0
        // is held against the size of the data: 3e6 and 60, times 1e-16.
        new("Wampler1", Powers, Wampler(1), [1, 1, 1, 1, 1, 1], [0, 0, 0, 0, 0, 0],
            0, DigitsOfB: 9, DigitsOfU: 9, DigitsOfSd: 9),
        new("Wampler2", Powers, Wampler(2), [1, 0.1, 0.01, 0.001, 0.0001, 0.00001], [0, 0, 0, 0, 0, 0],
            0, DigitsOfB: 12, DigitsOfU: 14, DigitsOfSd: 14),

        // The same with more and more left over: 2e3, 2e5 and 2e7 beside coefficients of 1.
        new("Wampler3", Powers, Wampler(3), [1, 1, 1, 1, 1, 1],
            [2152.32624678170, 2363.55173469681, 779.343524331583, 101.475507550350, 5.64566512170752, 0.112324854679312],
            2360.14502379268, DigitsOfB: 8.5, DigitsOfU: 13, DigitsOfSd: 13),
        new("Wampler4", Powers, Wampler(4), [1, 1, 1, 1, 1, 1],
            [215232.624678170, 236355.173469681, 77934.3524331583, 10147.5507550350, 564.566512170752, 11.2324854679312],
            236014.502379268, DigitsOfB: 7.5, DigitsOfU: 13, DigitsOfSd: 13),
        new("Wampler5", Powers, Wampler(5), [1, 1, 1, 1, 1, 1],
            [21523262.4678170, 23635517.3469681, 7793435.24331583, 1014755.07550350, 56456.6512170752, 1123.24854679312],
            23601450.2379268, DigitsOfB: 5.5, DigitsOfU: 13, DigitsOfSd: 13),
    ];

    private static double[][] Powers => Polynomial("Wampler", x: 0, degree: 5);

    private static double[] Wampler(int set) => Column("Wampler", set);

    private static double[] Column(string table, int column) => [.. Embedded.Table(table).Select(row => row[column])];

    private static double[][] Polynomial(string table, int x, int degree) =>
        [.. Column(table, x).Select(value => PowersOf(value, degree))];

    /// <summary>By repeated multiplication: a library's power may differ in its last digit from machine to machine.</summary>
    private static double[] PowersOf(double value, int degree)
    {
        double[] powers = new double[degree + 1];
        powers[0] = 1;
        for (int i = 1; i <= degree; i++)
        {
            powers[i] = value * powers[i - 1];
        }

        return powers;
    }

    private sealed record CertifiedFit(
        string Name,
        double[][] Design,
        double[] Y,
        double[] B,
        double[] U,
        double ResidualSd,
        double DigitsOfB,
        double DigitsOfU,
        double DigitsOfSd);
}
