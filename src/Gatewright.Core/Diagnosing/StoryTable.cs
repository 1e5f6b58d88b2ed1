namespace Gatewright.Core.Diagnosing;

/// <summary>
/// What each story of a boat does to its evidence and to the state, in flat arrays: hundreds of stories are asked dozens
/// of questions, and an object each would cost more than the arithmetic.
/// </summary>
/// <remarks>
/// A story throws its unknowns F by d ~ N(s, D), beside what a healthy boat's scatter by. With √D M_FF √D + I = L Lᵀ,
/// W = L⁻¹ √D, b′ = b − M s and z = W b′_F: the evidence is ln N(r) + ½ sᵀ(b + b′) − ln |L| + ½ zᵀz (matrix determinant
/// lemma and Woodbury identity); given the readings d is N(s + Wᵀz, WᵀW), so that a sum of unknowns that follows d by t
/// has its mean moved by tᵀ(s + Wᵀz) and its variance raised by |W t|². A spread of 0 changes nothing. The derivation
/// stands in docs/method-diagnosing.md.
/// </remarks>
internal sealed class StoryTable
{
    /// <summary>A story throws four unknowns at most, but for a boat read in many lyings.</summary>
    private const int MostOnStack = 16;

    private readonly EvidenceKernel _kernel;
    private readonly int[] _starts;
    private readonly int[] _rowStarts;
    private readonly int[] _unknowns;
    private readonly double[] _shifts;
    private readonly double[] _pulls;
    private readonly double[] _rows;
    private readonly double[] _gains;
    private readonly bool _isMoved;

    public StoryTable(EvidenceKernel kernel, IReadOnlyList<Opening> openings, IReadOnlyList<StoryParts> stories)
    {
        _kernel = kernel;
        _starts = new int[stories.Count + 1];
        _rowStarts = new int[stories.Count + 1];
        for (int story = 0; story < stories.Count; story++)
        {
            int count = stories[story].CountUnknowns(openings);
            _starts[story + 1] = _starts[story] + count;
            _rowStarts[story + 1] = _rowStarts[story] + (count * (count + 1) / 2);
        }

        _unknowns = new int[_starts[^1]];
        _shifts = new double[_starts[^1]];
        _pulls = new double[_starts[^1]];
        _rows = new double[_rowStarts[^1]];
        _gains = new double[stories.Count];
        _isMoved = openings.Any(o => o.Shifts.Length > 0);
        for (int story = 0; story < stories.Count; story++)
        {
            _gains[story] = Fill(story, openings, stories[story]);
        }
    }

    /// <summary>ln of the story's evidence, less that of nothing being wrong.</summary>
    public double LogGain(int story) => _gains[story];

    /// <summary>The unknowns that the story throws, none twice.</summary>
    public ReadOnlySpan<int> Unknowns(int story) => _unknowns.AsSpan(_starts[story].._starts[story + 1]);

    /// <summary>W, its lower triangle row after row.</summary>
    public ReadOnlySpan<double> Rows(int story) => _rows.AsSpan(_rowStarts[story].._rowStarts[story + 1]);

    /// <summary>z.</summary>
    public ReadOnlySpan<double> Pulls(int story) => _pulls.AsSpan(_starts[story].._starts[story + 1]);

    /// <summary>s.</summary>
    public ReadOnlySpan<double> Shifts(int story) => _shifts.AsSpan(_starts[story].._starts[story + 1]);

    /// <summary>The mean and variance of a sum of unknowns if the story is true.</summary>
    public (double Mean, double Variance) Moments(int story, StateSum sum)
    {
        (double mean, double variance) = (sum.Mean, sum.Variance);
        ReadOnlySpan<double> follows = sum.Follows;
        ReadOnlySpan<int> unknowns = Unknowns(story);
        ReadOnlySpan<double> pulls = Pulls(story);
        ReadOnlySpan<double> rows = Rows(story);
        int entry = 0;
        for (int i = 0; i < unknowns.Length; i++)
        {
            double whitened = 0;
            for (int j = 0; j <= i; j++)
            {
                whitened += rows[entry++] * follows[unknowns[j]];
            }

            mean += whitened * pulls[i];
            variance += whitened * whitened;
        }

        return (_isMoved ? mean + Shifted(story, follows) : mean, variance);
    }

    private double Shifted(int story, ReadOnlySpan<double> follows)
    {
        double sum = 0;
        for (int i = _starts[story]; i < _starts[story + 1]; i++)
        {
            sum += _shifts[i] * follows[_unknowns[i]];
        }

        return sum;
    }

    private double Fill(int story, IReadOnlyList<Opening> openings, StoryParts parts)
    {
        int start = _starts[story];
        int count = _starts[story + 1] - start;
        Span<double> spreads = count <= MostOnStack ? stackalloc double[count] : new double[count];
        int at = 0;
        for (int part = 0; part < parts.Count; part++)
        {
            Opening opening = openings[parts[part]];
            opening.Unknowns.CopyTo(_unknowns, start + at);
            opening.Shifts.CopyTo(_shifts, start + at);
            opening.Spreads.CopyTo(spreads[at..]);
            at += opening.Unknowns.Length;
        }

        double logDeterminant = FillRows(story, spreads);
        return FillPulls(story) - logDeterminant;
    }

    /// <summary>W, one row after another, each from those above it; returns ln |L|.</summary>
    private double FillRows(int story, ReadOnlySpan<double> spreads)
    {
        int count = spreads.Length;
        ReadOnlySpan<int> unknowns = Unknowns(story);
        Span<double> rows = _rows.AsSpan(_rowStarts[story].._rowStarts[story + 1]);
        Span<double> above = count <= MostOnStack ? stackalloc double[count] : new double[count];
        int size = _kernel.Model.Layout.Size;
        double logDeterminant = 0;
        for (int i = 0; i < count; i++)
        {
            ReadOnlySpan<double> information = _kernel.Information.AsSpan(unknowns[i] * size, size);
            double pivot = 1 + (spreads[i] * spreads[i] * information[unknowns[i]]);
            int entry = 0;
            for (int j = 0; j < i; j++)
            {
                double sum = 0;
                for (int k = 0; k <= j; k++)
                {
                    sum += rows[entry++] * information[unknowns[k]];
                }

                above[j] = spreads[i] * sum;
                pivot -= above[j] * above[j];
            }

            // I + √D M √D has no eigenvalue below 1, so less is rounding.
            pivot = Math.Max(1, pivot);
            logDeterminant += 0.5 * Math.Log(pivot);
            FillRow(rows, above[..i], spreads[i], Math.Sqrt(pivot));
        }

        return logDeterminant;
    }

    private static void FillRow(Span<double> rows, ReadOnlySpan<double> above, double spread, double diagonal)
    {
        int i = above.Length;
        Span<double> row = rows.Slice(i * (i + 1) / 2, i + 1);
        for (int j = 0; j < i; j++)
        {
            double sum = 0;
            for (int k = j; k < i; k++)
            {
                sum += above[k] * rows[(k * (k + 1) / 2) + j];
            }

            row[j] = -sum / diagonal;
        }

        row[i] = spread / diagonal;
    }

    /// <summary>z; returns ½ sᵀ(b + b′) + ½ zᵀz.</summary>
    private double FillPulls(int story)
    {
        int start = _starts[story];
        ReadOnlySpan<int> unknowns = Unknowns(story);
        ReadOnlySpan<double> rows = Rows(story);
        Span<double> scores = unknowns.Length <= MostOnStack ? stackalloc double[unknowns.Length] : new double[unknowns.Length];
        double gain = 0;
        int entry = 0;
        for (int i = 0; i < unknowns.Length; i++)
        {
            scores[i] = ScoreAfter(story, unknowns[i]);
            gain += _shifts[start + i] * (_kernel.Score[unknowns[i]] + scores[i]);
            double pull = 0;
            for (int j = 0; j <= i; j++)
            {
                pull += rows[entry++] * scores[j];
            }

            _pulls[start + i] = pull;
            gain += pull * pull;
        }

        return 0.5 * gain;
    }

    /// <summary>b′ = b − M s: the score of one unknown once the story has moved the means by s.</summary>
    private double ScoreAfter(int story, int unknown)
    {
        int size = _kernel.Model.Layout.Size;
        double score = _kernel.Score[unknown];
        for (int i = _starts[story]; i < _starts[story + 1]; i++)
        {
            score -= _kernel.Information[(unknown * size) + _unknowns[i]] * _shifts[i];
        }

        return score;
    }
}
