using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Views;

/// <summary>A boat that was taken off its rack lies on none.</summary>
public class NoRackTests
{
    [Fact]
    public void A_boat_once_laid_on_a_rack_can_be_put_on_none()
    {
        Assert.Equal("a1", Rack(Laid("a1", 2)));
        Assert.Null(Rack(Laid("a1", 2), Off(3)));
    }

    [Fact]
    public void What_is_laid_on_a_rack_later_lies_there_again() => Assert.Equal("a2", Rack(Laid("a1", 2), Off(3), Laid("a2", 4)));

    [Fact]
    public void A_rack_that_was_set_holds() => Assert.Equal("a3", Rack(Journals.Entry(2, Journals.Set("teal", "rack", "a3"), 2), Laid("a1", 3)));

    private static string? Rack(params Recorded[] records)
    {
        Club club = Club.Empty(Journals.Club).With([Journals.Entry(1, Journals.Set("teal", "class", "2-"), 1), .. records]);
        return BoatBerth.Of(new(club, "teal")).Rack;
    }

    private static Recorded Laid(string rack, int ms) => Journals.Entry(ms, new BoatLaid($"l-{rack}", "teal", Lie.Inverted, LevelBasis.Rack, Rack: rack), ms);

    private static Recorded Off(int ms) =>
        Journals.Entry(ms, new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["rack"] = null }), ms);
}
