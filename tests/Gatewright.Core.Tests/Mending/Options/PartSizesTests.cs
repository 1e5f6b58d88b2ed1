using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;

namespace Gatewright.Core.Tests.Mending.Options;

public class PartSizesTests
{
    [Fact]
    public void What_can_be_bought_is_in_the_settings()
    {
        PartSizes sizes = PartSizes.Of(MendingSettings.Default);

        Assert.Equal([1, 2, 3, 4, 5, 6, 7], sizes.Inserts);
        Assert.Equal([0.5, 1, 2], sizes.Shims);
        Assert.Equal([0.5, 1, 2], sizes.Washers);
    }

    [Theory]
    [InlineData(0.1, 71)] // 0 to 7 in tenths, though 0.1 has no exact double
    [InlineData(2, 4)] // 0, 2, 4, 6
    [InlineData(10, 1)] // 0 alone
    public void Steps_of_any_width_reach_from_the_least_to_the_most(double step, int count) => Assert.Equal(
        count,
        PartSizes.Of(MendingSettings.Default with { InsertStepDegrees = step, LeastInsertDegrees = 0 }).Inserts.Count);

    [Fact]
    public void Every_size_on_the_club_s_list_can_be_had_though_there_is_none_just_now()
    {
        Stores stores = Stores.Of([new(new(PartKind.Insert, 4.5), 0), new(new(PartKind.Shim, 0.3), 2), new(new(PartKind.Shim, 1), 7)]);

        PartSizes sizes = PartSizes.Of(MendingSettings.Default, stores);

        Assert.Equal([1, 2, 3, 4, 4.5, 5, 6, 7], sizes.Inserts);
        Assert.Equal([0.3, 0.5, 1, 2], sizes.Shims);
        Assert.Equal([0.5, 1, 2], sizes.Washers);
    }
}
