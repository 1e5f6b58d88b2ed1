namespace Gatewright.Core.Tests.Words;

/// <summary>The trade's nouns that stand at the root of Core.</summary>
public class WordsTests
{
    [Fact]
    public void Every_class_of_boat_is_there_smallest_first() =>
        Assert.Equal(
            ["1x", "2x", "2-", "2+", "4x", "4x+", "4-", "4+", "8+", "8x+"],
            BoatClass.All.Select(c => c.Name));

    [Theory]
    [InlineData("1x", 1, Rowing.Scull, false, 2)]
    [InlineData("2-", 2, Rowing.Sweep, false, 2)]
    [InlineData("4x+", 4, Rowing.Scull, true, 8)]
    [InlineData("8+", 8, Rowing.Sweep, true, 8)]
    [InlineData("8X+", 8, Rowing.Scull, true, 16)]
    public void A_class_says_its_seats_how_it_is_rowed_and_its_gates(string name, int seats, Rowing rowing, bool coxed, int gates)
    {
        BoatClass boatClass = BoatClass.Parse(name);

        Assert.Equal((seats, rowing, coxed, gates), (boatClass.Seats, boatClass.Rowing, boatClass.IsCoxed, boatClass.Gates));
    }

    [Theory]
    [InlineData("")]
    [InlineData("3x")]
    [InlineData(" 1x")]
    public void What_is_no_class_is_refused_with_those_there_are(string name)
    {
        Assert.Null(BoatClass.TryParse(name));
        Assert.Equal(
            $"'{name}' is not a class of boat: expected one of 1x 2x 2- 2+ 4x 4x+ 4- 4+ 8+ 8x+. (Parameter 'name')",
            Assert.Throws<ArgumentException>(() => BoatClass.Parse(name)).Message);
    }

    [Fact]
    public void Gates_stand_from_the_bow_port_first()
    {
        GatePlace[] places = [new(2, Side.Port), new(1, Side.Starboard), new(1, Side.Port)];

        Assert.Equal(["seat 1 port", "seat 1 starboard", "seat 2 port"], places.Order().Select(p => p.ToString()));
        Assert.True(places[2] < places[1] && places[1] <= places[0] && places[0] > places[2] && places[0] >= places[1]);
    }

    [Fact]
    public void Port_is_plus_one_and_upright_is_plus_one()
    {
        Assert.Equal((1, -1), (Side.Port.Sign(), Side.Starboard.Sign()));
        Assert.Equal((1, -1), (Lie.Upright.Sign(), Lie.Inverted.Sign()));
        Assert.Equal((Side.Starboard, Side.Port), (Side.Port.Opposite(), Side.Starboard.Opposite()));
    }

    [Fact]
    public void Every_word_is_the_trades()
    {
        Assert.Equal(["port", "starboard"], Enum.GetValues<Side>().Select(s => s.Word()));
        Assert.Equal(["upright", "inverted"], Enum.GetValues<Lie>().Select(l => l.Word()));
        Assert.Equal(["catch", "abeam", "finish"], Stations.All.Select(s => s.Word()));
        Assert.Equal(["at the catch", "abeam", "at the finish"], Stations.All.Select(s => s.Phrase()));
    }
}
