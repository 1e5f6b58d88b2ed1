using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Oars;
using Gatewright.Journal.Oars;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Oars;

/// <summary>What is told of a set beside its figures.</summary>
internal static class SetWords
{
    /// <summary>What so many oars let one say, then each oar that is not good, then how a sleeve comes in line.</summary>
    public static IEnumerable<string> Of(OarSetView set)
    {
        foreach (SetWorth worth in set.Judged.Where(j => j.Oars.Count > 0).Select(j => j.Worth).Distinct())
        {
            yield return English.Oars.Worth(worth);
        }

        foreach (JudgedItem item in set.Judged)
        {
            foreach (JudgedOar oar in item.Oars.Where(o => o.Verdict != Verdict.Good))
            {
                yield return English.Oars.Off(item, oar);
                if (item is { Item: OarItem.Sleeve, Worth: > SetWorth.Pair } && oar.Verdict == Verdict.Adjust)
                {
                    yield return English.Oars.Turn(oar.Oar.Name, SleeveTurn.InLine(oar, RigDimensions.Default));
                }
            }
        }
    }
}
