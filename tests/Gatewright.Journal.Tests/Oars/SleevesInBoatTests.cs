using Gatewright.Core;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Oars;

/// <summary>Which sleeve is behind which gate.</summary>
public sealed class SleevesInBoatTests
{
    private static readonly GatePlace Seat2 = new(2, Side.Port);
    private static readonly GatePlace[] Four = [new(1, Side.Starboard), Seat2, new(3, Side.Starboard), new(4, Side.Port)];
    private static readonly GatePlace[] Double = [new(1, Side.Port), new(1, Side.Starboard), Seat2, new(2, Side.Starboard)];

    [Fact]
    public void The_oar_at_a_seat_and_side_of_the_boat_gives_its_sleeve()
    {
        SleevesInBoat sleeves = Of([.. At("b2", "heron", "port"), Sleeve("b2", 1.5m), .. At("b3", "heron", "starboard")]);

        Assert.Equal(1.5, sleeves.Sleeve(Seat2)!.Value, 9);
        Assert.Null(sleeves.Sleeve(new(2, Side.Starboard)));
        Assert.Null(sleeves.Sleeve(new(4, Side.Port)));
        Assert.Equal("b2", sleeves.Name(Seat2));
        Assert.Null(sleeves.Name(new(4, Side.Port)));
    }

    [Fact]
    public void Of_two_oars_at_one_place_neither_counts_and_another_boat_s_never() =>
        Assert.All(
            (Fact[][])[
                [.. At("b2", "heron", "port"), Sleeve("b2", 1.5m), .. At("b4", "heron", "port"), Sleeve("b4", 1)],
                [.. At("b2", "teal", "port"), Sleeve("b2", 1.5m)]],
            facts =>
            {
                Assert.Null(Of(facts).Sleeve(Seat2));
                Assert.Null(Of(facts).Name(Seat2));
            });

    [Fact]
    public void A_sweep_oar_needs_no_side_and_a_scull_does()
    {
        Fact[] sideless = [.. At("b2", "heron", null), Sleeve("b2", 1.5m)];

        Assert.Equal(1.5, Of(sideless).Sleeve(Seat2)!.Value, 9);
        Assert.Null(Of([.. sideless, .. At("b4", "heron", "port"), Sleeve("b4", 1)]).Sleeve(Seat2));
        Assert.All(Double, gate => Assert.Null(Of(sideless, Double).Sleeve(gate)));
    }

    private static SleevesInBoat Of(Fact[] facts, GatePlace[]? gates = null) =>
        new(new(Club.Empty(Journals.Club).With(facts.Select((fact, i) => Journals.Entry(i + 1, fact, i + 1)))), "heron", gates ?? Four);

    private static Fact[] At(string oar, string boat, string? side) =>
        [new ThingSet(Things.Oar, oar, new Dictionary<string, string?> { ["boat"] = boat, ["seat"] = "2", ["side"] = side })];

    private static OarRead Sleeve(string oar, decimal value) => new(oar, OarItem.Sleeve, value, Session: "s", Level: LevelBasis.Read, BowHigh: 0);
}
