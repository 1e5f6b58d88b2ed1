using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Rounds;

public sealed class RoundPlanTests
{
    private static readonly RoundPlan Plan = RoundPlan.None.Begun("r1", RoundClubs.Day, ["a", "b", "c"]) with
    {
        Stations = [Station.Catch, Station.Finish],
        Gauge = "g1",
    };

    [Fact]
    public void It_comes_back_as_it_was_written()
    {
        var again = RoundPlan.Read(Plan.Write());
        Assert.Equal(Plan.Write(), again.Write());
        Assert.Equal((Plan.Round, Plan.Day, Plan.Gauge), (again.Round, again.Day, again.Gauge));
        Assert.Equal(Plan.Boats, again.Boats);
        Assert.Equal(Plan.Stations, again.Stations);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("""{"round":"r1"}""")]
    [InlineData("""{"round":null,"day":null,"boats":[],"stations":["Sideways"],"gauge":null}""")]
    public void What_cannot_be_read_is_no_round(string? text) => Assert.Equal(RoundPlan.None.Write(), RoundPlan.Read(text).Write());

    [Fact]
    public void A_plan_from_when_it_still_remembered_which_slips_are_none_can_be_read() => Assert.Equal(
        "r1",
        RoundPlan.Read("""{"round":"r1","day":null,"boats":["a"],"stations":["Abeam"],"gauge":null,"kept":["01900000-0000-7000-8000-000000000001"]}""").Round);

    [Fact]
    public void A_plan_without_a_station_reads_abeam() =>
        Assert.Equal([Station.Abeam], RoundPlan.Read((Plan with { Stations = [] }).Write()).Stations);

    [Theory]
    [InlineData("a", "", "b")]
    [InlineData("a", "b", "c")]
    [InlineData("c", "", "a")]
    [InlineData("b", "a c", null)]
    [InlineData("elsewhere", "", "a")]
    public void The_next_boat_is_the_first_after_this_of_which_nothing_was_read(string boat, string read, string? next) =>
        Assert.Equal(next, Plan.After(boat, read.Split(' ').Contains));

    [Fact]
    public void When_it_ends_the_way_of_reading_is_kept()
    {
        RoundPlan ended = Plan.Ended();
        Assert.Equal((null, null, 0), (ended.Round, ended.Day, ended.Boats.Count));
        Assert.Equal((Plan.Stations, "g1"), (ended.Stations, ended.Gauge));
    }

    [Fact]
    public void A_boat_is_added_once() => Assert.Equal(["a", "b", "c", "d"], Plan.With("d").With("a").Boats);

    [Theory]
    [InlineData("her", true)]
    [InlineData("HERON", true)]
    [InlineData("8+", true)]
    [InlineData("", true)]
    [InlineData("8", false)]
    [InlineData("x-17", true)]
    [InlineData("teal", false)]
    public void A_boat_is_found_by_part_of_its_name_its_class_or_its_code(string sought, bool found)
    {
        RoundClubs clubs = RoundClubs.Of("8+");
        clubs.Add(new ThingSet(Things.Boat, RoundClubs.Boat, new Dictionary<string, string?> { ["code"] = "X-17" }));
        Assert.Equal(found, BoatSearch.IsMeant(clubs.View, sought));
    }

    [Theory]
    [InlineData("X-17", true)]
    [InlineData("heron", true)]
    [InlineData("https://shed.example/app/boat/heron", true)]
    [InlineData("https://shed.example/app/boat/grey-heron", false)]
    [InlineData("her", false)]
    public void A_label_leads_to_its_boat_and_no_other(string code, bool found)
    {
        RoundClubs clubs = RoundClubs.Of("8+");
        clubs.Add(new ThingSet(Things.Boat, RoundClubs.Boat, new Dictionary<string, string?> { ["code"] = "X-17" }));
        BoatView[] boats = [clubs.View];
        Assert.Equal(found, BoatSearch.ByCode(boats, code) is not null);
    }
}
