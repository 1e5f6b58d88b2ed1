using Gatewright.Planning.Choosing;

namespace Gatewright.Planning.Tests.Choosing;

/// <summary>The best choice by trying every one: slow, and plain enough to be believed.</summary>
internal static class EveryChoice
{
    /// <summary>The figures of the best choice, each as it stands in the account.</summary>
    public static IReadOnlyList<long> Best(ChoiceModel model, IReadOnlyList<Aim> aims)
    {
        long[]? best = null;
        foreach (int[] chosen in All(model, 0, new int[model.Groups.Count]))
        {
            if (Fits(model, chosen))
            {
                long[] figures = [.. aims.SelectMany(aim => Figures(model, aim, chosen))];
                best = best is null || IsBetter(aims, figures, best) ? figures : best;
            }
        }

        return best!;
    }

    private static IEnumerable<int[]> All(ChoiceModel model, int group, int[] chosen)
    {
        if (group == chosen.Length)
        {
            yield return chosen;
            yield break;
        }

        for (int option = 0; option < model.Groups[group].Count; option++)
        {
            chosen[group] = option;
            foreach (int[] rest in All(model, group + 1, chosen))
            {
                yield return rest;
            }
        }
    }

    private static int Used(ChoiceModel model, int[] chosen, int resource) =>
        chosen.Select((option, group) => model.Groups[group][option].Uses.Where(u => u.Resource == resource).Sum(u => u.Amount)).Sum();

    private static bool Fits(ChoiceModel model, int[] chosen) => Enumerable.Range(0, model.Resources.Count)
        .All(r => model.Resources[r].CanBeBought || Used(model, chosen, r) <= model.Resources[r].Capacity);

    private static IEnumerable<long> Figures(ChoiceModel model, Aim aim, int[] chosen) => aim switch
    {
        Aim.OfOptions options => [Sum(options, chosen)],
        Aim.OfBundles bundles => [bundles.Bundles.Count(b => IsAchieved(model.Bundles[b], chosen))],
        Aim.OfPurchases => [Enumerable.Range(0, model.Resources.Count)
            .Sum(r => (long)Math.Max(0, Used(model, chosen, r) - model.Resources[r].Capacity))],
        RankedAims ranked => ranked.Aims.Select(a => Sum(a, chosen)),
        _ => throw new ArgumentException($"{aim} is new.", nameof(aim)),
    };

    private static long Sum(Aim.OfOptions aim, int[] chosen)
    {
        long sum = 0;
        for (int group = 0; group < chosen.Length; group++)
        {
            sum += aim.Worth[group][chosen[group]];
        }

        return sum;
    }

    private static bool IsAchieved(Bundle bundle, int[] chosen) =>
        bundle.Members.All(m => m.Allowed[chosen[m.Group]])
        && bundle.Pairs.All(p => p.Together[chosen[p.First]][chosen[p.Second]]);

    private static bool IsBetter(IReadOnlyList<Aim> aims, long[] one, long[] other)
    {
        bool[] most = [.. aims.SelectMany(aim => aim is RankedAims ranked ? ranked.Aims.Select(a => a.IsMost) : [aim.IsMost])];
        int differs = Enumerable.Range(0, one.Length).FirstOrDefault(i => one[i] != other[i], -1);
        return differs >= 0 && one[differs] > other[differs] == most[differs];
    }
}
