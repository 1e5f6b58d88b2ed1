namespace Gatewright.Core.Advising;

/// <summary>
/// How much entropy a reading is expected to take away, over the accounts of a gate and over its pitch where it was
/// not read, by quadrature over the reading's outcome.
/// </summary>
/// <remarks>
/// The trapezium rule on an even grid over the whole mixture, row after row: for integrands as smooth as these it
/// converges faster than any power of the step. What is known before the reading is taken from the same points as what
/// is known after it, so that the drop is that of one distribution and never below nothing. Where a reading settles a
/// pitch the classes turn within a small part of the outcomes: the grid is as fine as that asks.
/// </remarks>
internal sealed class ExpectedDrop
{
    /// <summary>In deviations of the narrowest feature.</summary>
    public const double Step = 0.75;

    /// <summary>An account this many deviations away is not there: a part in a thousand million of its peak.</summary>
    private const double Nowhere = 6.5;

    /// <summary>An account this unlikely at an outcome is left out of the classes there.</summary>
    private const double NotWorthAdding = 1e-5;

    /// <summary>Where the outcomes are this much less dense than at their peak, the classes are not asked.</summary>
    private const double NotWorthAsking = 1e-5;

    /// <summary>A pitch that keeps this much of its deviation has its bump met by the accounts' own grid.</summary>
    private const double Met = 0.4;

    private readonly OutcomeModel _outcomes;
    private readonly StationOutlook _outlook;
    private readonly int _accounts;
    private readonly OutcomeGrid _rows;
    private readonly OutcomeGrid _columns;

    /// <summary>Of each account along the row at hand: ln of its weight and scale, its mean and its deviation.</summary>
    private readonly double[] _logs;
    private readonly double[] _means;
    private readonly double[] _deviations;

    /// <summary>The accounts' densities along the row, one account after another, and their entropies' terms summed.</summary>
    private readonly double[] _densities;
    private readonly double[] _sums;
    private readonly double[] _terms;

    /// <summary>Of each station its classes, summed over the points that were asked.</summary>
    private readonly double[] _classes;

    public ExpectedDrop(Observation observation, OutcomeModel outcomes, GateView view, double step = Step)
    {
        _outcomes = outcomes;
        _outlook = new(observation, outcomes, view);
        _accounts = outcomes.Weights.Length;
        double[] left = [.. Enumerable.Range(0, _accounts).Select(_outlook.Left)];
        double[] widths = [.. left.Select(share => Math.Min(1, share / Met))];
        _rows = outcomes.Dimensions == 1 ? OutcomeGrid.Single : OutcomeGrid.Along(outcomes, 0, step, widths);
        _columns = OutcomeGrid.Along(outcomes, outcomes.Dimensions - 1, step, widths);
        _logs = new double[_accounts];
        _means = new double[_accounts];
        _deviations = new double[_accounts];
        _densities = new double[_accounts * _columns.Points];
        _sums = new double[_columns.Points];
        _terms = new double[_columns.Points];
        _classes = new double[_outlook.Stations.Count * VerdictStation.ClassCount];
    }

    /// <summary>How many outcomes it goes through.</summary>
    public int Points => _rows.Points * _columns.Points;

    /// <summary>The drops to expect, in bits.</summary>
    public (double Causes, double Verdicts) Bits()
    {
        double causes = 0;
        double total = 0;
        double verdicts = 0;
        double asked = 0;
        double least = NotWorthAsking * Peak();
        double[] accounts = new double[_accounts];
        for (int row = 0; row < _rows.Points; row++)
        {
            FillRow(_rows[row]);
            for (int column = 0; column < _columns.Points; column++)
            {
                double density = _sums[column];
                if (density <= 0)
                {
                    continue;
                }

                // −Σ p log₂ p with p = g/f is log₂ f − Σ g log₂ g / f.
                causes += (density * Math.Log2(density)) - _terms[column];
                total += density;
                for (int k = 0; k < _accounts; k++)
                {
                    accounts[k] += _densities[(k * _columns.Points) + column];
                }

                if (density >= least)
                {
                    verdicts += density * VerdictBits(_rows[row], column, density);
                    asked += density;
                }
            }
        }

        return (Bits(accounts, total) - (causes / total), Bits(_classes, asked) - (verdicts / asked));
    }

    private static double Bits(double[] sums, double total)
    {
        double bits = 0;
        foreach (double sum in sums)
        {
            bits += Entropy.Term(sum / total);
        }

        return bits;
    }

    /// <summary>How dense the outcomes are at the middle of the account that is densest there, less a factor that all share.</summary>
    private double Peak()
    {
        double peak = 0;
        for (int k = 0; k < _accounts; k++)
        {
            peak = Math.Max(peak, _outcomes.Weights[k] / (_outcomes.Factors[k, 0] * _outcomes.Factors[k, 2]));
        }

        return peak;
    }

    private void FillRow(double first)
    {
        Array.Clear(_densities);
        Array.Clear(_sums);
        Array.Clear(_terms);
        for (int k = 0; k < _accounts; k++)
        {
            bool single = _outcomes.Dimensions == 1;
            double one = single ? 0 : (first - _outcomes.Means[k, 0]) / _outcomes.Factors[k, 0];
            _means[k] = single ? _outcomes.Means[k, 0] : _outcomes.Means[k, 1] + (_outcomes.Factors[k, 1] * one);
            _deviations[k] = _outcomes.Factors[k, single ? 0 : 2];
            _logs[k] = Math.Log(_outcomes.Weights[k] / (_outcomes.Factors[k, 0] * _outcomes.Factors[k, 2])) - (0.5 * one * one);
            if (Math.Abs(one) < Nowhere)
            {
                FillAccount(k);
            }
        }
    }

    /// <summary>
    /// A normal density from point to point: its ratio falls by the same factor each time, so that two products do for
    /// an exponential.
    /// </summary>
    private void FillAccount(int account)
    {
        const double BitsPerNat = 1.4426950408889634;
        double width = _columns.Width / _deviations[account];
        double centre = (_means[account] - _columns.From) / _columns.Width;
        int from = Math.Max(0, (int)Math.Ceiling(centre - (Nowhere / width)));
        int to = Math.Min(_columns.Points - 1, (int)Math.Floor(centre + (Nowhere / width)));
        double standard = (from - centre) * width;
        double density = Math.Exp(_logs[account] - (0.5 * standard * standard));
        double ratio = Math.Exp(-width * (standard + (0.5 * width)));
        double fall = Math.Exp(-width * width);
        Span<double> densities = _densities.AsSpan(account * _columns.Points, _columns.Points);
        for (int column = from; column <= to; column++)
        {
            densities[column] = density;
            _sums[column] += density;
            _terms[column] += density * BitsPerNat * (_logs[account] - (0.5 * standard * standard));
            density *= ratio;
            ratio *= fall;
            standard += width;
        }
    }

    private double VerdictBits(double first, int column, double density)
    {
        double bits = 0;
        double second = _columns[column];
        Span<double> classes = stackalloc double[VerdictStation.ClassCount];
        for (int s = 0; s < _outlook.Stations.Count; s++)
        {
            classes.Clear();
            for (int k = 0; k < _accounts; k++)
            {
                double own = _densities[(k * _columns.Points) + column];
                if (own >= NotWorthAdding * density)
                {
                    double along = (second - _means[k]) / _deviations[k];
                    (double one, double two) = _outcomes.Dimensions == 1
                        ? (along, 0)
                        : ((first - _outcomes.Means[k, 0]) / _outcomes.Factors[k, 0], along);
                    _outlook.Add(k, s, own, one, two, classes);
                }
            }

            double kept = classes[0] + classes[1] + classes[2];
            for (int c = 0; c < VerdictStation.ClassCount; c++)
            {
                _classes[(s * VerdictStation.ClassCount) + c] += density * classes[c] / kept;
            }

            bits += Entropy.Term(classes[0] / kept) + Entropy.Term(classes[1] / kept) + Entropy.Term(classes[2] / kept);
        }

        return bits;
    }
}
