using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// The linear-Gaussian algebra that all stories of a boat share: one factorisation, after which each story costs a
/// few small products.
/// </summary>
/// <remarks>
/// With S = H P Hᵀ + R the covariance of the readings when nothing is wrong, M = Hᵀ S⁻¹ H and b = Hᵀ S⁻¹ r. A story
/// that adds variances D to unknowns F and moves their means by s has, with b′ = b − M s, by the matrix determinant lemma and the Woodbury identity,
/// ln N(r) = ln N₀(r) + ½ sᵀ(b + b′) − ½ ln |I + D M_FF| + ½ b′_Fᵀ (D⁻¹ + M_FF)⁻¹ b′_F: no factorisation larger
/// than F is repeated.
/// </remarks>
internal sealed class EvidenceKernel
{
    /// <summary>A story opens four unknowns at most, but for a boat read in many lyings: those go to the heap.</summary>
    internal const int MostOnStack = 16;

    private readonly int _size;

    public EvidenceKernel(LinearModel model)
    {
        Model = model;
        _size = model.Layout.Size;
        int rows = model.Rows;
        double[] factor = ReadingCovariance(model);
        if (!Cholesky.Factor(factor, rows))
        {
            throw new InvalidOperationException("The readings' covariance is not positive definite: a gauge without noise?");
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

    /// <summary>ln N₀(r): the evidence of the story that nothing is wrong.</summary>
    public double LogDensity { get; }

    /// <summary>M = Hᵀ S⁻¹ H.</summary>
    public double[] Information { get; }

    /// <summary>b = Hᵀ S⁻¹ r.</summary>
    public double[] Score { get; }

    /// <summary>What a story's evidence has over that of nothing being wrong, as a logarithm.</summary>
    public double LogGain(in Opened opened)
    {
        int count = opened.Count;
        Span<double> inner = count <= MostOnStack ? stackalloc double[count * count] : new double[count * count];
        Span<double> score = count <= MostOnStack ? stackalloc double[count] : new double[count];
        Inner(opened, inner);
        double logDeterminant = Cholesky.LogDeterminant(inner, count);
        double moved = 0;
        for (int i = 0; i < count; i++)
        {
            score[i] = ScoreAfter(opened, opened.Unknowns[i]);
            logDeterminant += Math.Log(opened.Variances[i]);

            // ln N₀(r − H s) − ln N₀(r) = sᵀb − ½ sᵀM s = ½ sᵀ(b + b′).
            moved += 0.5 * opened.Shifts[i] * (Score[opened.Unknowns[i]] + score[i]);
        }

        Cholesky.SolveLower(inner, count, score);
        return moved + (0.5 * (Cholesky.Dot(score, score) - logDeterminant));
    }

    /// <summary>b′ = b − M s: the score of one unknown once the story has moved the means by s.</summary>
    public double ScoreAfter(in Opened opened, int unknown)
    {
        double score = Score[unknown];
        if (opened.IsMoved)
        {
            for (int i = 0; i < opened.Count; i++)
            {
                score -= Information[(unknown * _size) + opened.Unknowns[i]] * opened.Shifts[i];
            }
        }

        return score;
    }

    /// <summary>The Cholesky factor of D⁻¹ + M_FF.</summary>
    public void Inner(in Opened opened, Span<double> inner)
    {
        int count = opened.Count;
        ReadOnlySpan<int> unknowns = opened.Unknowns;
        for (int i = 0; i < count; i++)
        {
            ReadOnlySpan<double> line = Information.AsSpan(unknowns[i] * _size, _size);
            for (int j = 0; j <= i; j++)
            {
                inner[(i * count) + j] = line[unknowns[j]];
            }

            inner[(i * count) + i] += 1 / opened.Variances[i];
        }

        // M is positive semidefinite and 1/D is positive, so this cannot fail but for rounding beyond use.
        if (!Cholesky.Factor(inner, count))
        {
            throw new InvalidOperationException("A story's information is not positive definite.");
        }
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
