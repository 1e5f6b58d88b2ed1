using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// The linear-Gaussian algebra that all stories of a boat share: one factorisation, after which each story costs a
/// few small products.
/// </summary>
/// <remarks>
/// S = H P Hᵀ + R is the covariance of the readings when nothing is wrong; M = Hᵀ S⁻¹ H and b = Hᵀ S⁻¹ r are all that
/// a story needs of them. If nothing is wrong, the state given the readings has mean μ + P b and covariance P − P M P: a
/// normal conditioned on a part of it (Rasmussen and Williams, Gaussian Processes for Machine Learning, 2006, appendix A.2),
/// which is also one step of Kalman's filter.
/// </remarks>
internal sealed class EvidenceKernel
{
    private readonly int _size;

    public EvidenceKernel(LinearModel model)
    {
        Model = model;
        _size = model.Layout.Size;
        int rows = model.Rows;
        double[] factor = ReadingCovariance(model);
        if (!Cholesky.Factor(factor, rows))
        {
            throw new ArgumentException(
                "Two readings repeat each other without noise: a gauge needs a resolution or a repeatability above 0.");
        }

        double[] whitened = [.. model.Residuals];
        Cholesky.SolveLower(factor, rows, whitened);
        LogDensity = -0.5 * ((rows * Math.Log(2 * Math.PI))
            + Cholesky.LogDeterminant(factor, rows)
            + Cholesky.Dot(whitened, whitened));
        double[] columns = WhitenedColumns(model, factor);
        Information = new double[_size * _size];
        Score = new double[_size];
        for (int i = 0; i < _size; i++)
        {
            ReadOnlySpan<double> column = columns.AsSpan(i * rows, rows);
            Score[i] = Cholesky.Dot(column, whitened);
            for (int j = 0; j <= i; j++)
            {
                double value = Cholesky.Dot(column, columns.AsSpan(j * rows, rows));
                Information[(i * _size) + j] = value;
                Information[(j * _size) + i] = value;
            }
        }
    }

    public LinearModel Model { get; }

    /// <summary>ln N(r; 0, S): the evidence of the story that nothing is wrong.</summary>
    public double LogDensity { get; }

    /// <summary>M = Hᵀ S⁻¹ H, row by row.</summary>
    public double[] Information { get; }

    /// <summary>b = Hᵀ S⁻¹ r.</summary>
    public double[] Score { get; }

    /// <summary>The mean of an unknown given the readings, if nothing is wrong: (μ + P b)ₖ.</summary>
    public double Mean(int unknown) => Model.Means[unknown] + (Model.Variances[unknown] * Score[unknown]);

    /// <summary>The covariance of two unknowns given the readings, if nothing is wrong: (P − P M P)ᵢⱼ.</summary>
    public double Covariance(int one, int other)
    {
        double explained = Model.Variances[one] * Information[(one * _size) + other] * Model.Variances[other];
        return one == other ? Model.Variances[one] - explained : -explained;
    }

    /// <summary>
    /// How an unknown follows another being thrown by 1, once the readings have been allowed to answer: (I − P M)ₖf.
    /// </summary>
    public double Follows(int unknown, int thrown)
    {
        double answered = Model.Variances[unknown] * Information[(unknown * _size) + thrown];
        return unknown == thrown ? 1 - answered : -answered;
    }

    /// <summary>S = R + H P Hᵀ, its lower triangle.</summary>
    private static double[] ReadingCovariance(LinearModel model)
    {
        int rows = model.Rows;
        int size = model.Layout.Size;
        double[] result = new double[rows * rows];
        Span<double> scaled = new double[size];
        for (int i = 0; i < rows; i++)
        {
            ReadOnlySpan<double> line = model.Design.AsSpan(i * size, size);
            for (int k = 0; k < size; k++)
            {
                scaled[k] = line[k] * model.Variances[k];
            }

            for (int j = 0; j <= i; j++)
            {
                result[(i * rows) + j] = Cholesky.Dot(scaled, model.Design.AsSpan(j * size, size));
            }

            result[(i * rows) + i] += model.Noise[i];
        }

        return result;
    }

    /// <summary>L⁻¹ H, column after column.</summary>
    private static double[] WhitenedColumns(LinearModel model, double[] factor)
    {
        int rows = model.Rows;
        int size = model.Layout.Size;
        double[] columns = new double[size * rows];
        for (int k = 0; k < size; k++)
        {
            Span<double> column = columns.AsSpan(k * rows, rows);
            for (int row = 0; row < rows; row++)
            {
                column[row] = model.Design[(row * size) + k];
            }

            Cholesky.SolveLower(factor, rows, column);
        }

        return columns;
    }
}
