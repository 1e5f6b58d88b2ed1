using Gatewright.App.Keeping.Gauges;
using Gatewright.App.Keeping.Racks;
using Gatewright.App.Keeping.Standards;
using Gatewright.App.Keeping.Stores;
using Gatewright.App.Tests.World;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Keeping;
using Gatewright.Journal.Views;

namespace Gatewright.App.Tests.Keeping;

public class FormRulesTests
{
    private static readonly DateOnly Today = new(2026, 5, 4);

    [Fact]
    public void A_part_without_size_and_count_says_both()
    {
        Assert.Equal(new() { ["Size"] = "WrongDegrees", ["Count"] = "WrongCount" }, new PartForm().Problems().ToDictionary());
        Assert.Equal(
            new() { ["Size"] = "WrongMillimetres", ["Count"] = "WrongCount" },
            new PartForm { Part = "shim", Size = "0", Count = "1,5" }.Problems().ToDictionary());
    }

    [Fact]
    public void A_pin_has_no_size() =>
        Assert.Equal(new StockCounted("pin", 0, 3), new PartForm { Part = "pin", Size = "8", Count = "3" }.Fact());

    [Fact]
    public void A_part_is_counted_as_it_was_typed() =>
        Assert.Equal(new StockCounted("insert", 4.5m, 12), new PartForm { Size = "4,5", Count = "12" }.Fact());

    [Fact]
    public void A_level_asks_for_both_directions_and_a_day_that_has_been()
    {
        Assert.Equal(["BowHigh", "PortLow", "Date"], new LevelForm { Date = "2026-05-05" }.Problems(Today).Keys);
        Assert.Empty(new LevelForm { BowHigh = 0.3m, PortLow = -0.1m }.Problems(Today));
    }

    [Fact]
    public void A_level_of_today_states_no_day_and_an_earlier_one_does()
    {
        Assert.Equal(new RackLevelRead("a", 0.3m, -0.1m), new LevelForm { BowHigh = 0.3m, PortLow = -0.1m, Date = "2026-05-04" }.Fact("a", Today));
        Assert.Equal(new RackLevelRead("a", 0, 0, new(2026, 5, 1)), new LevelForm { BowHigh = 0, PortLow = 0, Date = "2026-05-01" }.Fact("a", Today));
    }

    [Fact]
    public async Task A_new_rack_goes_to_the_end_of_the_walk()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        Assert.Equal("1", RackForm.Of(club.InHand.Club, null).Order);
        await club.InHand.RecordAsync([.. new RackForm { Name = "A", Order = "2,5", Bed = "soft" }.Facts("a")]);

        Assert.Equal("3", RackForm.Of(club.InHand.Club, null).Order);
        Assert.Equal(2.5m, Assert.Single(RackView.All(club.InHand.Club)).Order);
        Assert.Equal(["Name", "Order"], new RackForm { Name = "a", Order = "x" }.Problems(club.InHand.Club, null).Keys);
    }

    [Fact]
    public async Task A_gauge_says_all_that_is_wrong_and_keeps_what_is_usual_unset()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        Assert.Equal(["Name", "Resolution", "Repeatability"], new GaugeForm { Resolution = "0", Repeatability = "-1" }.Problems(club.InHand.Club, null).Keys);

        ThingSet set = Assert.IsType<ThingSet>(Assert.Single(new GaugeForm { Name = "Dial", Resolution = "0,1" }.Facts("dial")));
        Assert.Equal(new() { ["name"] = "Dial", ["resolution"] = "0.1" }, set.Fields.ToDictionary());
    }

    [Fact]
    public void A_standard_out_of_order_says_all_of_it_at_once()
    {
        StandardForm form = StandardForm.New("Novices", Standard.Club);
        form["catch-lowest"] = "6";
        form["finish-floor"] = "2";
        form["largest-drop"] = "lots";

        Assert.Equal(
            new()
            {
                ["largest-drop"] = StandardFault.OutOfRange,
                ["catch-lowest"] = StandardFault.LowestAboveHighest,
                ["finish-floor"] = StandardFault.FloorAboveLowest,
            },
            form.Faults().ToDictionary());
    }

    [Fact]
    public async Task A_copy_of_a_standard_judges_as_it_was_typed()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        StandardForm form = StandardForm.New("Novices", Standard.Club);
        form["catch-lowest"] = "3,5";
        await club.InHand.RecordAsync([.. form.Facts("novices")]);

        Standard own = StandardsView.Of(club.InHand.Club)["novices"];
        Assert.Equal(Standard.Club with { Name = "Novices", Catch = StationLimits.FromDegrees(3.5, 5, 2) }, own);
        Assert.Equal("NameTaken", StandardForm.New("novices", own).NameProblem(club.InHand.Club, null));
    }
}
