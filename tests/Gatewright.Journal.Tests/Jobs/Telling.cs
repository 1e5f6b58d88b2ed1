using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Jobs;

/// <summary>A club that is told one thing after another, a minute apart.</summary>
internal sealed class Telling
{
    private static readonly DateTimeOffset Morning = new(2026, 5, 4, 7, 0, 0, TimeSpan.Zero);
    private int _told;

    public Club Club { get; private set; } = Club.Empty(Journals.Club);

    /// <summary>Tells facts.</summary>
    /// <returns>The entry of the last.</returns>
    public Guid Tell(params Fact[] facts)
    {
        foreach (Fact fact in facts)
        {
            _told++;
            Club = Club.With(Journals.Entry(_told, fact, Morning.AddMinutes(_told).ToUnixTimeMilliseconds()));
        }

        return Journals.Id(_told);
    }

    /// <summary>Lets days go by.</summary>
    public void Wait(int days) => _told += days * 24 * 60;

    /// <summary>A boat of a class, lying level as read.</summary>
    public void Boat(string key, string boatClass) => Tell(
        new ThingSet(Things.Boat, key, new Dictionary<string, string?> { ["name"] = key, ["class"] = boatClass }),
        new BoatLaid("lie-" + key, key, Lie.Upright, LevelBasis.Read, 0, 0));

    /// <summary>Reads a gate at catch, abeam and finish.</summary>
    public void Read(string boat, GatePlace gate, decimal atCatch, decimal abeam, decimal finish, string? job = null, string? lying = null)
    {
        foreach ((Station station, decimal value) in new[] { (Station.Catch, atCatch), (Station.Abeam, abeam), (Station.Finish, finish) })
        {
            Tell(new ReadingTaken(lying ?? "lie-" + boat, boat, ReadItem.Gate, gate.Seat, gate.Side, value, station, null, null, job));
        }
    }

    /// <summary>A double with a wrong insert in the gate of seat 1 starboard, which reads 2° less than the others.</summary>
    public static Telling WrongInsert(string boat = "teal")
    {
        var telling = new Telling();
        telling.Boat(boat, "2x");
        foreach (GatePlace gate in new GatePlace[] { new(1, Side.Port), new(2, Side.Port), new(2, Side.Starboard) })
        {
            telling.Read(boat, gate, 4, 4, 4);
        }

        telling.Read(boat, Wrong, 2, 2, 2);
        return telling;
    }

    public static GatePlace Wrong { get; } = new(1, Side.Starboard);

    public async Task<BoatStanding> StandingAsync(string boat = "teal") => (await ShedVerdicts.Of(Club).BoatAsync(boat))!;
}
