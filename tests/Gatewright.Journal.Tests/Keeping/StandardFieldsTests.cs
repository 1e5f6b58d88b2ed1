using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Keeping;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Tests.Views;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Keeping;

public class StandardFieldsTests
{
    [Fact]
    public void They_are_the_numbers_that_a_standard_has_in_the_journal() =>
        Assert.Equal(Things.Fields[Things.Standard].Keys.Except(["name"]).Order(), StandardFields.All.Order());

    [Theory]
    [InlineData("catch-lowest", 3)]
    [InlineData("abeam-highest", 5)]
    [InlineData("finish-lowest", 1.5)]
    [InlineData("finish-floor", 0)]
    [InlineData("largest-drop", 2.5)]
    [InlineData("largest-range", 1.5)]
    public void They_say_what_the_standard_says(string field, double value) =>
        Assert.Equal((decimal)value, StandardFields.Value(Standard.Club, field));

    [Fact]
    public void Written_and_read_again_a_standard_is_the_same()
    {
        var fields = StandardFields.All.ToDictionary(f => f, f => (string?)FormattableString.Invariant($"{StandardFields.Value(Standard.Race, f)}"));
        fields["name"] = "race";
        var set = new ThingSet(Things.Standard, "ours", fields);

        Assert.Equal(Standard.Race, StandardsView.Of(ChangesTests.Of(Journals.Entry(1, set, 1)))["ours"]);
    }

    [Fact]
    public void What_is_built_in_has_no_fault() => Assert.All(Standard.BuiltIn, s => Assert.Empty(StandardFields.Faults(Values(s))));

    [Fact]
    public void Every_fault_is_found_at_once() => Assert.Equal(
        [
            ("abeam-highest", StandardFault.OutOfRange),
            ("largest-drop", StandardFault.OutOfRange),
            ("catch-floor", StandardFault.FloorAboveLowest),
            ("finish-lowest", StandardFault.LowestAboveHighest),
        ],
        StandardFields.Faults(Values(Standard.Club, ("abeam-highest", 31), ("largest-drop", -1), ("catch-floor", 3.1m), ("finish-lowest", 5.1m))));

    [Theory]
    [InlineData(3, 0)]
    [InlineData(3.01, 1)]
    public void A_floor_may_lie_on_the_lowest_and_no_higher(double floor, int faults) =>
        Assert.Equal(faults, StandardFields.Faults(Values(Standard.Club, ("abeam-floor", (decimal)floor))).Count);

    [Fact]
    public void A_number_that_is_missing_is_one_fault_and_no_more() =>
        Assert.Equal([("catch-lowest", StandardFault.OutOfRange)], StandardFields.Faults(Values(Standard.Club, ("catch-lowest", null))));

    [Fact]
    public void A_floor_below_the_built_in_one_is_told()
    {
        Assert.Empty(StandardFields.LoweredFloors(Values(Standard.Race)));
        Assert.Equal([Station.Catch, Station.Finish], StandardFields.LoweredFloors(Values(Standard.Club, ("catch-floor", 1.9m), ("finish-floor", -0.1m))));
    }

    private static Dictionary<string, decimal?> Values(Standard standard, params (string Field, decimal? Value)[] otherwise)
    {
        var values = StandardFields.All.ToDictionary(f => f, f => (decimal?)StandardFields.Value(standard, f));
        foreach ((string field, decimal? value) in otherwise)
        {
            values[field] = value;
        }

        return values;
    }
}
