using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What lies on the shelf: each count wipes out what was recorded before it, each change adds to it.</summary>
public static class StoresView
{
    /// <summary>How many of each part there are; a shelf that went below nothing stands at its true, negative count.</summary>
    public static IReadOnlyDictionary<(string Part, decimal Size), int> Of(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        var counts = new Dictionary<(string Part, decimal Size), int>();
        foreach (Recorded record in club.About(Subject.Stores))
        {
            switch (record.Fact)
            {
                case StockCounted counted:
                    counts[(counted.Part, counted.Size)] = counted.Count;
                    break;
                case StockChanged changed:
                    counts[(changed.Part, changed.Size)] = counts.GetValueOrDefault((changed.Part, changed.Size)) + changed.Change;
                    break;
            }
        }

        return counts;
    }
}
