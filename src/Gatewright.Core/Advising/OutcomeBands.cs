using Gatewright.Core.Geometry;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Advising;

/// <summary>What each outcome of a reading would mean: bands, from end to end of the scale, in which one account leads.</summary>
internal sealed class OutcomeBands
{
    /// <summary>Bands meet at tenths of a degree.</summary>
    private const double Cell = 0.1;

    /// <summary>A band less likely than this goes to its likelier neighbour.</summary>
    private const double LeastChance = 0.02;

    private readonly OutcomeModel _outcomes;
    private readonly IReadOnlyList<Account> _accounts;
    private readonly int _first;
    private readonly int _cells;

    private OutcomeBands(OutcomeModel outcomes, IReadOnlyList<Account> accounts)
    {
        const double Reach = 3.5;
        _outcomes = outcomes;
        _accounts = accounts;
        List<int> each = [.. Enumerable.Range(0, accounts.Count)];
        _first = (int)Math.Floor(each.Min(k => outcomes.Means[k, 0] - (Reach * outcomes.Factors[k, 0])) / Cell);
        _cells = (int)Math.Ceiling(each.Max(k => outcomes.Means[k, 0] + (Reach * outcomes.Factors[k, 0])) / Cell) - _first;
    }

    /// <summary>The bands of a reading's outcomes; of one dimension.</summary>
    public static List<ReadingOutcome> Of(OutcomeModel outcomes, IReadOnlyList<Account> accounts)
    {
        var bands = new OutcomeBands(outcomes, accounts);
        List<Band> runs = bands.Runs();
        while (runs.Count > 1 && runs.MinBy(r => bands.Chance(r)) is var least && bands.Chance(least) < LeastChance)
        {
            runs = bands.Without(runs, least);
        }

        return [.. runs.Select(bands.Told)];
    }

    /// <summary>Cells with the same account leading, one run after the other.</summary>
    private List<Band> Runs()
    {
        var runs = new List<Band>();
        for (int cell = 0; cell < _cells; cell++)
        {
            Append(runs, new(cell, cell + 1, Leader(cell)));
        }

        return runs;
    }

    private static void Append(List<Band> bands, Band next)
    {
        if (bands.Count > 0 && bands[^1].Account == next.Account)
        {
            bands[^1] = bands[^1] with { To = next.To };
        }
        else
        {
            bands.Add(next);
        }
    }

    /// <summary>The bands with one given to the likelier of its neighbours, which may then join the one beyond it.</summary>
    private List<Band> Without(List<Band> bands, Band gone)
    {
        int at = bands.IndexOf(gone);
        bool toLower = at == bands.Count - 1 || (at > 0 && Chance(bands[at - 1]) >= Chance(bands[at + 1]));
        Band heir = bands[toLower ? at - 1 : at + 1];
        var result = new List<Band>();
        foreach (Band band in bands)
        {
            Append(result, band == gone ? band with { Account = heir.Account } : band);
        }

        return result;
    }

    private int Leader(int cell)
    {
        int leader = 0;
        double most = -1;
        for (int k = 0; k < _accounts.Count; k++)
        {
            double chance = Chance(k, cell, cell + 1);
            if (chance > most)
            {
                (most, leader) = (chance, k);
            }
        }

        return leader;
    }

    private double Chance(Band band) => Enumerable.Range(0, _accounts.Count).Sum(k => Chance(k, band.From, band.To));

    /// <summary>How likely an account is and the outcome between two cells' ends, of which the outermost are open.</summary>
    private double Chance(int account, int from, int to)
    {
        double above = from == 0 ? 1 : Normal.Above(Standard(account, from));
        double beyond = to == _cells ? 0 : Normal.Above(Standard(account, to));
        return _outcomes.Weights[account] * (above - beyond);
    }

    private double Standard(int account, int cell) =>
        (((_first + cell) * Cell) - _outcomes.Means[account, 0]) / _outcomes.Factors[account, 0];

    private ReadingOutcome Told(Band band)
    {
        double chance = Chance(band);
        return new(
            band.From == 0 ? null : End(band.From),
            band.To == _cells ? null : End(band.To),
            chance,
            new(_accounts[band.Account].Parts, Chance(band.Account, band.From, band.To) / chance));
    }

    // Divided, not multiplied: 37 / 10 is 3.7, 37 × 0.1 is not.
    private Angle End(int cell) => Angle.FromDegrees((_first + cell) / (1 / Cell));

    private readonly record struct Band(int From, int To, int Account);
}
