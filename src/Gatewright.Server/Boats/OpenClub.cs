using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Store;

namespace Gatewright.Server.Boats;

/// <summary>A club as its journal tells it up to a number.</summary>
/// <param name="Club">The club.</param>
/// <param name="Number">The number of the last entry in it.</param>
/// <param name="Shed">Its boats, and how they are judged.</param>
internal sealed record OpenClub(Club Club, long Number, ShedVerdicts Shed)
{
    /// <summary>What it is called; its id while it has no name.</summary>
    public string Name => ClubSettings.Name(Club) ?? Club.Name;

    /// <summary>A club of which nothing is worked out yet.</summary>
    public static OpenClub Of(Club club, long number) => new(club, number, ShedVerdicts.Of(club));

    /// <summary>The club with the entries that follow.</summary>
    public OpenClub With(IReadOnlyList<Numbered> tail)
    {
        if (tail.Count == 0)
        {
            return this;
        }

        Recorded[] records = [.. tail.Select(n => Recorded.Of(n.Entry))];
        Club grown = Club.With(records);
        return new(grown, tail[^1].Number, Shed.With(grown, records.Any(ChancesView.Heeds)));
    }
}
