using Gatewright.Core.Measuring;
using MathNet.Numerics.LinearAlgebra;

namespace Gatewright.Core.Tests.Advising;

/// <summary>
/// The model of a boat written out anew, with whole matrices and a library's algebra: every story's prior, every
/// reading's row, no identity that saves work.
/// </summary>
/// <remarks>Plain readings of gates in one lying, with one gauge; the default numbers of the design.</remarks>
internal sealed class DenseOracle
{
    private static readonly (double Mean, double Variance) HealthyPitch = (4, 0.3 * 0.3);
    private static readonly (double Mean, double Variance) HealthyLean = (0, 0.3 * 0.3);

    private readonly List<GatePlace> _gates;
    private readonly Matrix<double> _rows;
    private readonly Vector<double> _shown;
    private readonly double[] _noise;
    private readonly Vector<double> _means;
    private readonly double[] _variances;

    public DenseOracle(IReadOnlyList<Reading> readings, double levelU, double zeroU)
    {
        _gates = [.. readings.Select(r => r.Gate).Distinct().Order()];
        Size = (3 * _gates.Count) + 3;
        _rows = Matrix<double>.Build.DenseOfRowVectors(readings.Select(Row));
        _shown = Vector<double>.Build.DenseOfEnumerable(readings.Select(r => r.Value.Degrees));
        _noise = [.. readings.Select(Noise)];
        _means = Vector<double>.Build.Dense(Size);
        _variances = new double[Size];
        for (int gate = 0; gate < _gates.Count; gate++)
        {
            (_means[3 * gate], _variances[3 * gate]) = HealthyPitch;
            (_means[(3 * gate) + 1], _variances[(3 * gate) + 1]) = HealthyLean;
            (_means[(3 * gate) + 2], _variances[(3 * gate) + 2]) = HealthyLean;
        }

        (_variances[BowHigh], _variances[PortLow], _variances[Zero]) = (levelU * levelU, levelU * levelU, zeroU * zeroU);
        Stories = [.. All()];
    }

    public int Size { get; }

    public int BowHigh => Size - 3;

    public int PortLow => Size - 2;

    public int Zero => Size - 1;

    /// <summary>Every story with its prior odds.</summary>
    public List<DenseStory> Stories { get; }

    public int Gate(GatePlace gate) => 3 * _gates.IndexOf(gate);

    /// <summary>ln of prior odds times evidence, and the state given the readings.</summary>
    public (double LogWeight, Vector<double> Mean, Matrix<double> Covariance) Given(DenseStory story)
    {
        double[] variances = [.. _variances];
        foreach (DensePart part in story.Parts)
        {
            foreach (int unknown in part.Unknowns)
            {
                variances[unknown] += part.Spread * part.Spread;
            }
        }

        Matrix<double> prior = Matrix<double>.Build.DenseOfDiagonalArray(variances);
        Matrix<double> covariance = (_rows * prior * _rows.Transpose()) + Matrix<double>.Build.DenseOfDiagonalArray(_noise);
        Vector<double> off = _shown - (_rows * _means);
        Matrix<double> gain = prior * _rows.Transpose() * covariance.Inverse();
        double logEvidence = -0.5 * (off.DotProduct(covariance.Solve(off)) + Math.Log(covariance.Determinant()));
        return (story.Parts.Sum(p => p.LogOdds) + logEvidence, _means + (gain * off), prior - (gain * _rows * prior));
    }

    private Vector<double> Row(Reading reading)
    {
        double angle = reading.At.Angle.Degrees * Math.PI / 180;
        double side = reading.Gate.Side == Side.Port ? 1 : -1;
        double lie = reading.Lie.Lie == Lie.Upright ? 1 : -1;
        Vector<double> row = Vector<double>.Build.Dense(Size);
        int gate = Gate(reading.Gate);
        (row[gate], row[gate + 1], row[gate + 2]) = (1, Math.Cos(angle), Math.Sin(angle));
        (row[BowHigh], row[PortLow], row[Zero]) = (lie * Math.Cos(angle), lie * side * Math.Sin(angle), 1);
        return row;
    }

    private static double Noise(Reading reading)
    {
        double held = 0.5 * (reading.At.Station == Station.Abeam ? 1 : 5) * Math.PI / 180;
        return (0.5 * 0.5 / 12) + (0.2 * 0.2) + (held * held);
    }

    private IEnumerable<DenseStory> All()
    {
        List<DensePart> parts = [.. _gates.SelectMany(AtGate), new(null, [BowHigh, PortLow], 2, 0.03), new(null, [Zero], 1.5, 0.02)];
        yield return new([]);
        for (int i = 0; i < parts.Count; i++)
        {
            yield return new([parts[i]]);
            for (int j = 0; j < i; j++)
            {
                if (parts[i].Gate != parts[j].Gate || parts[i].Gate is null)
                {
                    yield return new([parts[i], parts[j]]);
                }
            }
        }
    }

    private IEnumerable<DensePart> AtGate(GatePlace gate)
    {
        int at = Gate(gate);
        yield return new(gate, [at], 2, 0.015);
        yield return new(gate, [at + 1], 2.5, 0.015);
        yield return new(gate, [at + 2], 2.5, 0.015);
        yield return new(gate, [at + 1, at + 2], 2.5, 0.015);
    }
}

/// <summary>One cause: the unknowns it opens and by how much.</summary>
internal sealed record DensePart(GatePlace? Gate, int[] Unknowns, double Spread, double Chance)
{
    public double LogOdds => Math.Log(Chance / (1 - Chance));
}

/// <summary>Causes that hold together.</summary>
internal sealed record DenseStory(IReadOnlyList<DensePart> Parts)
{
    /// <summary>What it says of a gate and of what the boat shares, as a key.</summary>
    public string SeenFrom(GatePlace gate) => string.Join(
        ' ', Parts.Where(p => p.Gate is null || p.Gate == gate).Select(p => string.Join('+', p.Unknowns)).Order());
}
