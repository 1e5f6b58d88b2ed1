using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Oars;

/// <summary>What giving oars to gates puts on record.</summary>
public sealed class OarGivingTests
{
    private static readonly GatePlace Bow = new(1, Side.Starboard);
    private static readonly GatePlace Stroke = new(2, Side.Port);
    private static readonly GatePlace[] Pair = [Bow, Stroke];

    [Fact]
    public void Given_oars_stand_in_the_boat_at_their_gates_with_the_day_and_who_said_so()
    {
        Club club = With(Oar("a", "starboard", null, null), Oar("b", "port", "teal", "4"));
        OarGiving giving = Of(club, ("a", Bow), ("b", Stroke));

        Club after = club.With([.. giving.Facts.Select((fact, i) => Journals.Entry(50 + i, fact, 86_400_000 + i, member: "m-ada"))]);
        OarView[] oars = [.. new OarsView(after).InBoat("heron")];

        Assert.Equal([("a", 1), ("b", 2)], oars.Select(o => (o.Key, o.Seat!.Value)));
        Assert.All(oars, oar => Assert.Equal(("m-ada", 1), (oar.Placed!.Member, oar.Placed.Time.Instant.DayOfYear - 1)));
        Assert.Empty(Of(after, ("a", Bow), ("b", Stroke)).Facts);
        Assert.Empty(new OarsView(after).InBoat("teal"));
    }

    [Fact]
    public void An_oar_that_stays_keeps_its_day_and_whoever_put_it_there()
    {
        Club club = With(Oar("a", "starboard", "heron", "1"), Oar("b", "port", null, null));

        OarGiving giving = Of(club, ("a", Bow), ("b", Stroke));

        Assert.Equal(["b"], giving.Given.Select(g => g.Oar.Key));
        Assert.Equal("b", Assert.IsType<ThingSet>(Assert.Single(giving.Facts)).Key);
    }

    /// <summary>Else two oars would stand at one gate, and which of them is rowed nobody would have said.</summary>
    [Fact]
    public void Whatever_oar_was_there_has_no_place_any_more()
    {
        Club club = With(
            Oar("a", "starboard", null, null), Oar("old", "starboard", "heron", "1"), Oar("sideless", null, "heron", "2"),
            Oar("spare", "port", "heron", null), Oar("gone", "starboard", "heron", "1", ("out-of-use", "yes")), Oar("other", "starboard", "teal", "1"));

        OarGiving giving = Of(club, ("a", Bow));
        Club after = club.With([.. giving.Facts.Select((fact, i) => Journals.Entry(50 + i, fact, 100 + i))]);

        Assert.Equal(["old"], giving.Freed.Select(o => o.Key));
        var oars = new OarsView(after);
        Assert.Equal(("heron", null), (oars.Oar("old")!.Boat, oars.Oar("old")!.Seat));

        // A gate that was not asked about is left as it is.
        Assert.Equal(2, oars.Oar("sideless")!.Seat);
        Assert.Equal("teal", oars.Oar("other")!.Boat);
        Assert.Equal(["old"], Of(club, ("sideless", Stroke), ("a", Bow)).Freed.Select(o => o.Key));
    }

    [Fact]
    public void Two_oars_that_change_places_free_none()
    {
        Club club = With(Oar("a", "port", "heron", "1"), Oar("b", "port", "heron", "2"));

        OarGiving giving = Of(club, ("a", new(2, Side.Port)), ("b", new(1, Side.Port)));

        Assert.Empty(giving.Freed);
        Assert.Equal(2, giving.Given.Count);
    }

    private static OarGiving Of(Club club, params (string Oar, GatePlace Gate)[] seats) => OarGiving.Of(
        new(club),
        "heron",
        Pair,
        new([.. seats.Select(s => new SeatedOar(s.Gate, new(s.Oar, s.Oar, s.Gate.Side), Estimate.FromDegrees(4, 0.3)))], 0));

    private static Club With(params Fact[] facts) =>
        Club.Empty(Journals.Club).With(facts.Select((fact, i) => Journals.Entry(i + 1, fact, i + 1)));

    private static ThingSet Oar(string key, string? side, string? boat, string? seat, params (string Field, string? Value)[] more) => new(
        Things.Oar,
        key,
        new[] { ("name", (string?)key), ("side", side), ("boat", boat), ("seat", seat) }.Concat(more).ToDictionary(f => f.Item1, f => f.Item2));
}
