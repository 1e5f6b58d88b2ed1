using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Rounds;

/// <summary>Clubs of one boat, written fact after fact, each an hour of the journal's clock after the one before.</summary>
internal sealed class RoundClubs
{
    public const string Boat = "heron";
    public const string Round = "r1";
    private static readonly DateTimeOffset Begin = new(2026, 5, 4, 8, 0, 0, TimeSpan.Zero);
    private int _number;

    public static DateOnly Day => new(2026, 5, 4);

    public Club Club { get; private set; } = Club.Empty(Journals.Club);

    public BoatView View => new(Club, Boat);

    public BoatInRound InRound => new(View, Round);

    public IReadOnlyList<GatePlace> Gates => BoatGates.Of(Club, View);

    public static RoundClubs Of(string boatClass)
    {
        var clubs = new RoundClubs();
        clubs.Add(new ThingSet(Things.Boat, Boat, new Dictionary<string, string?> { ["name"] = "Heron", ["class"] = boatClass }));
        return clubs;
    }

    public void Add(params IEnumerable<Fact> facts)
    {
        foreach (Fact fact in facts)
        {
            Club = Club.With(Journals.Entry(++_number, fact, Begin.ToUnixTimeMilliseconds() + _number));
        }
    }

    /// <summary>Every gate read abeam on a day, in another round, on a boat whose level was read.</summary>
    public void ReadAll(decimal value, DateOnly day, string lying = "before")
    {
        Add(new BoatLaid(lying, Boat, Lie.Upright, LevelBasis.Read, 0, 0, Date: day));
        Add(Gates.SelectMany(g => Stations.All.Select(s => new ReadingTaken(lying, Boat, ReadItem.Gate, g.Seat, g.Side, value, s))));
    }

    public BoatWalk Open(params Station[] stations) =>
        BoatWalk.Open(RoundOrder.Of(Gates, stations.Length == 0 ? [Station.Abeam] : stations), InRound);
}
