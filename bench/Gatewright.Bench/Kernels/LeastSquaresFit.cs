using BenchmarkDotNet.Attributes;
using Gatewright.Bench.Reporting;
using Gatewright.Core.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Gatewright.Bench.Kernels;

/// <summary>A gate and its pin from nine readings along the stroke, beside MathNet's QR.</summary>
public class LeastSquaresFit : IBench
{
    private const int Unknowns = 3;

    private static readonly double[] Radians = [.. Enumerable.Range(0, 9).Select(i => ((i * 12.5) - 43) * Math.PI / 180)];

    private readonly double[] _design = [.. Radians.SelectMany(at => new[] { 1, Math.Cos(at), Math.Sin(at) })];
    private readonly double[] _pitches = [.. Radians.Select((at, i) => 4 + (0.5 * Math.Sin(at)) + (i % 2 == 0 ? 0.1 : -0.1))];
    private readonly Matrix<double> _theirDesign;
    private readonly Vector<double> _theirPitches;

    public LeastSquaresFit()
    {
        _theirDesign = Matrix<double>.Build.DenseOfRowMajor(Radians.Length, Unknowns, _design);
        _theirPitches = Vector<double>.Build.DenseOfArray(_pitches);
    }

    /// <summary>Coefficients and their covariances.</summary>
    [Benchmark]
    public double Ours() => LeastSquares.Fit(_design, Unknowns, _pitches).Coefficients[2];

    /// <summary>Coefficients alone, which is the lesser task.</summary>
    [Benchmark]
    public double Theirs() => _theirDesign.QR(QRMethod.Thin).Solve(_theirPitches)[2];

    public IEnumerable<Measured> Measure() => [BesideMathNet.Compare<LeastSquaresFit>("Least squares, 9 readings and 3 unknowns", Ours, Theirs)];
}
