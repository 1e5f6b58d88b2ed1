using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Rounds;

/// <summary>Of all that was said of how a boat lay, what holds now.</summary>
internal static class LaidLast
{
    /// <summary>The last word on the lying that was begun last; null where nothing was said.</summary>
    /// <remarks>
    /// A device that is out of touch may put right what was said of a lying after the boat was moved: that tells how it lay, and lays
    /// nobody's boat back.
    /// </remarks>
    /// <param name="words">All that was said, oldest first.</param>
    public static BoatLaid? Of(IEnumerable<BoatLaid> words)
    {
        BoatLaid? last = null;
        HashSet<string> begun = [];
        foreach (BoatLaid word in words)
        {
            last = begun.Add(word.Lying) || word.Lying == last!.Lying ? word : last;
        }

        return last;
    }
}
