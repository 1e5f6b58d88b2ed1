using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Views;

/// <summary>Shelves stand in another order each time the program runs, and what is told of them does not.</summary>
public sealed class InOrderTests
{
    private static readonly string[] Keys = [.. Enumerable.Range(10, 20).Select(n => $"k{n}")];

    [Fact]
    public void Boats_stand_by_their_keys() => Assert.Equal(Keys, BoatView.All(Named(Things.Boat)).Select(b => b.Key));

    [Fact]
    public void Of_several_racks_of_one_code_the_first_is_meant() =>
        Assert.Equal(Keys[0], LabelSearch.Of(Named(Things.Rack, "code"), "alike")!.Key);

    [Fact]
    public void A_rack_is_meant_before_an_oar_of_its_key()
    {
        Club club = Club.Empty(Journals.Club).With([
            .. Keys.Select((key, i) => Journals.Entry(i, new ThingSet(Things.Oar, key.ToUpperInvariant(), new Dictionary<string, string?> { ["name"] = "1" }), i)),
            .. Keys.Select((key, i) => Journals.Entry(100 + i, new ThingSet(Things.Rack, key, new Dictionary<string, string?> { ["name"] = "1" }), i))]);

        Assert.All(Keys, key => Assert.Equal(Things.Rack, LabelSearch.Of(club, key)!.Thing));
    }

    [Fact]
    public void Standards_stand_by_their_keys_after_those_built_in() => Assert.Equal(
        Standard.BuiltIn.Select(s => s.Name).Concat(Keys), StandardsView.Of(Named(Things.Standard)).Keys);

    private static Club Named(string thing, string field = "name") => Club.Empty(Journals.Club).With(
        Keys.Select((key, i) => Journals.Entry(i, new ThingSet(thing, key, new Dictionary<string, string?> { [field] = "alike" }), i)));
}
