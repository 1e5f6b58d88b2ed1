using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Views;

public class InstrumentViewsTests
{
    [Fact]
    public void The_last_reversal_gives_a_gauge_its_zero()
    {
        Club club = Of(
            new ThingSet(Things.Gauge, "dial", new Dictionary<string, string?> { ["name"] = "Dial", ["resolution"] = "0.1" }),
            new GaugeReversed("dial", 5, 5),
            new GaugeReversed("dial", 2.3m, -1.9m));
        GaugeView gauge = Assert.Single(GaugeView.All(club, MeasuringSettings.Default));

        // Half the sum of +2.3 and −1.9; in binary 2.3 − 1.9 is not 0.4 to the last bit.
        Assert.Equal(0.2, gauge.Gauge.Zero.Estimate.Value.Degrees, 1e-12);
        Assert.Equal((0.05, true), (gauge.Gauge.Zero.Estimate.U.Degrees, gauge.Gauge.Zero.IsChecked));
        Assert.Equal((0.1, 0.2, 2), (gauge.Gauge.Resolution.Degrees, gauge.Gauge.Repeatability.Degrees, gauge.Checks.Count));
    }

    [Fact]
    public void Racks_stand_in_the_order_of_the_walk_and_those_without_a_place_last()
    {
        Club club = Of(Rack("a", null), Rack("b", "10"), Rack("c", "2.5"));
        Assert.Equal(["c", "b", "a"], RackView.All(club).Select(r => r.Key));
    }

    [Fact]
    public void The_level_of_the_latest_day_counts_whenever_it_was_recorded()
    {
        Club club = Of(
            Rack("a", "1"),
            new RackLevelRead("a", 0.3m, 0, new DateOnly(2026, 5, 4)),
            new RackLevelRead("a", 0.1m, 0, new DateOnly(2026, 5, 1)));

        Assert.Equal(0.3m, RackView.Of(club, "a").Level!.BowHigh);
        Assert.Equal(2, RackView.Of(club, "a").Levels.Count);
        Assert.Null(RackView.Of(Of(Rack("a", "1")), "a").Level);
    }

    private static ThingSet Rack(string key, string? order) =>
        new(Things.Rack, key, new Dictionary<string, string?> { ["name"] = key, ["order"] = order });

    private static Club Of(params Fact[] facts) => ChangesTests.Of([.. facts.Select((f, i) => Journals.Entry(i, f, i + 1))]);
}
