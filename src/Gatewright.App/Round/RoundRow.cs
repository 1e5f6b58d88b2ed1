using Gatewright.Core.Judging;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.App.Round;

/// <summary>A boat on a round, as the round's summary shows it.</summary>
/// <param name="View">The boat.</param>
/// <param name="Readings">How many readings the round has of it.</param>
/// <param name="Standing">How it stands; null until that is worked out.</param>
public sealed record RoundRow(BoatView View, int Readings, BoatStanding? Standing)
{
    /// <summary>Whether it is to stay ashore, by a hold or by what is on record of its gates, whichever round read them.</summary>
    public bool StaysAshore => View.Holds.Count > 0 || Standing?.StaysAshore == true;

    /// <summary>The verdict as it is shown; null where the round read nothing of it, until it is judged, and where it is to be read again.</summary>
    public Verdict? Shown => Readings > 0 ? Standing?.Shown : null;

    /// <summary>The boats of a round: those planned, in their order, then those read beside, in that of their first laying; judged as far as they were read.</summary>
    public static IReadOnlyList<RoundRow> Of(Club club, string round, IReadOnlyList<string> planned)
    {
        ArgumentNullException.ThrowIfNull(club);
        IEnumerable<string> read = club.Subjects
            .Where(s => s.Thing == Things.Boat && s.Key.Length > 0 && !planned.Contains(s.Key))
            .Select(s => (s.Key, First: club.About(s).FirstOrDefault(r => r.Fact is BoatLaid laid && laid.Round == round)?.Entry))
            .Where(b => b.First is not null)
            .OrderBy(b => b.First!, EntryOrder.Instance)
            .Select(b => b.Key);
        return [.. planned.Concat(read).Select(key => new BoatInRound(new(club, key), round))
            .Where(b => b.Boat.Records.Count > 0)
            .Select(b => new RoundRow(b.Boat, b.Readings.Count, null))];
    }
}
