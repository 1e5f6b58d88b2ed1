namespace Gatewright.Core.Advising;

/// <summary>
/// What a gate's pitch is to be where it was not read, under each account, once a reading's outcome is known: normal,
/// its mean linear in the standardised outcome.
/// </summary>
internal sealed class StationOutlook
{
    private readonly double[,] _means;
    private readonly double[,] _deviations;
    private readonly double[,,] _gains;

    public StationOutlook(Observation observation, OutcomeModel outcomes, GateView view)
    {
        Stations = view.Stations;
        int accounts = view.Accounts.Count;
        _means = new double[accounts, Stations.Count];
        _deviations = new double[accounts, Stations.Count];
        _gains = new double[accounts, Stations.Count, 2];
        for (int k = 0; k < accounts; k++)
        {
            for (int s = 0; s < Stations.Count; s++)
            {
                Condition(k, s, observation, outcomes, view.Accounts[k]);
            }
        }
    }

    public IReadOnlyList<VerdictStation> Stations { get; }

    /// <summary>Adds an account's class probabilities at a station, times a weight.</summary>
    public void Add(int account, int station, double weight, double one, double two, Span<double> classes)
    {
        double mean = _means[account, station] + (_gains[account, station, 0] * one) + (_gains[account, station, 1] * two);
        Stations[station].Add(weight, mean, _deviations[account, station], classes);
    }

    /// <summary>
    /// What the reading leaves at least of a pitch's deviation under an account, as a share of it. As wide, in the
    /// outcome's own deviations, is the bump that the entropy of the pitch's classes makes along the outcome.
    /// </summary>
    public double Left(int account)
    {
        double least = 1;
        for (int s = 0; s < Stations.Count; s++)
        {
            double gain = (_gains[account, s, 0] * _gains[account, s, 0]) + (_gains[account, s, 1] * _gains[account, s, 1]);
            least = Math.Min(least, _deviations[account, s] / Math.Sqrt((_deviations[account, s] * _deviations[account, s]) + gain));
        }

        return least;
    }

    private void Condition(int k, int s, Observation observation, OutcomeModel outcomes, Account account)
    {
        double[] pitch = Stations[s].Weights;
        double one = account.Covariance(pitch, observation.Sums[0]) / outcomes.Factors[k, 0];
        double two = observation.Dimensions == 1
            ? 0
            : (account.Covariance(pitch, observation.Sums[1]) - (outcomes.Factors[k, 1] * one)) / outcomes.Factors[k, 2];
        _means[k, s] = account.Mean(pitch);
        _gains[k, s, 0] = one;
        _gains[k, s, 1] = two;
        _deviations[k, s] = Math.Sqrt(Math.Max(1e-12, account.Covariance(pitch, pitch) - (one * one) - (two * two)));
    }
}
