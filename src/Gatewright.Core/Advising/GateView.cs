using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Advising;

/// <summary>
/// All stories of a boat as one gate sees them: sorted into the few accounts they give of this gate and of what the
/// boat shares.
/// </summary>
/// <remarks>
/// A boat has hundreds of stories, but of one gate they say no more than a dozen different things: what is wrong at
/// another gate reaches this one only through the level and the gauge's zero, which it hardly moves. So an account keeps
/// the whole weight of its stories and takes its unknowns, by their moments, from the likeliest of them.
/// </remarks>
internal sealed class GateView
{
    /// <summary>An account less likely than this changes no gain by as much as a thousandth of a bit.</summary>
    private const double Negligible = 3e-5;

    /// <summary>Stories that an account's unknowns are taken from.</summary>
    private const int MostMembers = 4;

    private GateView(GatePlace gate, List<Account> accounts, IReadOnlyList<VerdictStation> stations)
    {
        Gate = gate;
        Accounts = accounts;
        Weights = [.. accounts.Select(a => a.Weight)];
        Stations = stations;
        ClassProbabilities = [.. stations.Select(s => s.Classes(accounts))];
        Doubt = Entropy.Bits(Weights) + ClassProbabilities.Sum(c => Entropy.Bits(c));
    }

    public GatePlace Gate { get; }

    public List<Account> Accounts { get; }

    public double[] Weights { get; }

    /// <summary>The stations at which the gate was not read.</summary>
    public IReadOnlyList<VerdictStation> Stations { get; }

    /// <summary>Of each station, how likely its pitch is to be below the floor, outside the limits, inside.</summary>
    public List<double[]> ClassProbabilities { get; }

    /// <summary>All there is to learn here, in bits.</summary>
    public double Doubt { get; }

    /// <summary>How likely something is wrong that puts the gate outside its limits where it was not read.</summary>
    public double Faulty => Accounts
        .Where(a => a.Parts.Count > 0)
        .Sum(a => a.Weight * Stations.Select(s => 1 - s.Classes(a)[2]).DefaultIfEmpty().Max());

    /// <summary>How likely it is to be below its floor somewhere that it was not read.</summary>
    public double BelowFloor => Accounts.Sum(a => a.Weight * Stations.Select(s => s.Classes(a)[0]).DefaultIfEmpty().Max());

    public static GateView Of(GatePlace gate, StoryGroups stories, ViewLayout layout, IReadOnlyList<VerdictStation> stations)
    {
        int[] unknowns = layout.Unknowns(gate);
        List<StoryGroup> groups = [.. stories.SeenFrom(gate).Where(g => g.Weight >= Negligible)];
        double total = groups.Sum(g => g.Weight);
        return new(gate, [.. groups.Select(g => Told(g, unknowns, total))], stations);

        Account Told(StoryGroup group, int[] at, double all)
        {
            (double[] means, double[] covariances) = Moments(stories, group, at);
            return new(group.Parts, group.Weight / all, means, covariances);
        }
    }

    private static (double[] Means, double[] Covariances) Moments(StoryGroups stories, StoryGroup group, int[] unknowns)
    {
        int size = unknowns.Length;
        double[] means = new double[size];
        double[] second = new double[size * size];
        List<(int Story, double Share)> members = group.Likeliest(MostMembers);
        double[] one = [1];
        foreach ((int story, double share) in members)
        {
            StoryState state = stories.State(story);
            double[] own = new double[size];
            for (int i = 0; i < size; i++)
            {
                own[i] = state.Mean([unknowns[i]], one);
                means[i] += share * own[i];
                for (int j = 0; j <= i; j++)
                {
                    second[(i * size) + j] += share
                        * ((own[i] * own[j]) + state.Covariance([unknowns[i]], one, [unknowns[j]], one));
                }
            }
        }

        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                second[(i * size) + j] -= means[i] * means[j];
                second[(j * size) + i] = second[(i * size) + j];
            }
        }

        return (means, second);
    }
}
