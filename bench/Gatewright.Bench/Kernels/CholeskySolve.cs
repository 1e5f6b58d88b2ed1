using BenchmarkDotNet.Attributes;
using Gatewright.Bench.Reporting;
using Gatewright.Core.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Gatewright.Bench.Kernels;

/// <summary>A covariance as large as an eight read at three stations, factored and solved once, beside MathNet's.</summary>
public class CholeskySolve : IBench
{
    private const int Size = 24;

    private readonly double[] _covariance = Covariance();
    private readonly double[] _deviation = [.. Enumerable.Range(0, Size).Select(i => Math.Sin(i))];
    private readonly double[] _factor = new double[Size * Size];
    private readonly double[] _solution = new double[Size];
    private readonly Matrix<double> _theirCovariance;
    private readonly Vector<double> _theirDeviation;

    public CholeskySolve()
    {
        _theirCovariance = Matrix<double>.Build.DenseOfRowMajor(Size, Size, _covariance);
        _theirDeviation = Vector<double>.Build.DenseOfArray(_deviation);
    }

    [Benchmark]
    public double Ours()
    {
        _covariance.CopyTo(_factor, 0);
        _deviation.CopyTo(_solution, 0);
        Cholesky.Factor(_factor, Size);
        Cholesky.SolveLower(_factor, Size, _solution);
        Cholesky.SolveUpper(_factor, Size, _solution);
        return _solution[0];
    }

    [Benchmark]
    public double Theirs() => _theirCovariance.Cholesky().Solve(_theirDeviation)[0];

    public IEnumerable<Measured> Measure() => [BesideMathNet.Compare<CholeskySolve>("Cholesky 24×24, factor and solve", Ours, Theirs)];

    /// <summary>Errors of each reading's own on the diagonal, a level and a zero that all share beside it.</summary>
    private static double[] Covariance()
    {
        double[] rows = new double[Size * Size];
        for (int i = 0; i < Size; i++)
        {
            for (int j = 0; j < Size; j++)
            {
                double shared = 0.04 + (0.49 * Math.Cos(i % 3) * Math.Cos(j % 3));
                rows[(i * Size) + j] = i == j ? shared + 0.06 : shared;
            }
        }

        return rows;
    }
}
