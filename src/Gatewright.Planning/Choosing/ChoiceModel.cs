namespace Gatewright.Planning.Choosing;

/// <summary>
/// Choose one option in every group, so that no resource is used beyond what there is.
/// </summary>
/// <remarks>
/// The generalised assignment problem, which has the plain assignment (one worker a group, one task an option and a
/// resource of capacity 1) and the multiple-choice and 0/1 knapsacks (one item a group, to take or to leave) as special
/// cases; bundles add what several groups achieve only together.
/// </remarks>
/// <param name="Groups">The groups, each with its options; none is empty.</param>
/// <param name="Resources">What the options use.</param>
/// <param name="Bundles">What several groups achieve together.</param>
internal sealed record ChoiceModel(
    IReadOnlyList<IReadOnlyList<Choice>> Groups, IReadOnlyList<Resource> Resources, IReadOnlyList<Bundle> Bundles)
{
    /// <summary>How much of each resource a choice uses.</summary>
    public int[] Used(IReadOnlyList<int> chosen)
    {
        int[] used = new int[Resources.Count];
        for (int group = 0; group < Groups.Count; group++)
        {
            foreach ((int resource, int amount) in Groups[group][chosen[group]].Uses)
            {
                used[resource] += amount;
            }
        }

        return used;
    }

    /// <summary>Whether a choice achieves what a bundle is about.</summary>
    public bool Achieves(IReadOnlyList<int> chosen, int bundle) =>
        Bundles[bundle].Members.All(m => m.Allowed[chosen[m.Group]])
        && Bundles[bundle].Pairs.All(p => p.Together[chosen[p.First]][chosen[p.Second]]);
}
