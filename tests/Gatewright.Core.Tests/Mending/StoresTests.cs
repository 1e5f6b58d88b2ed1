using Gatewright.Core.Mending;

namespace Gatewright.Core.Tests.Mending;

public class StoresTests
{
    private static readonly Part Four = new(PartKind.Insert, 4);
    private static readonly Part Shim = new(PartKind.Shim, 0.5);

    [Fact]
    public void Lines_of_one_part_add_up()
    {
        Stores stores = Stores.Of([new(Shim, 2), new(Four, 1), new(Shim, 3)]);

        Assert.Equal(5, stores.Count(Shim));
        Assert.Equal("1 × insert 4°, 5 × shim 0.5 mm", string.Join(", ", stores.Parts));
    }

    [Fact]
    public void A_part_that_is_not_on_the_list_is_not_on_the_shelf() => Assert.Equal(0, Stores.Empty.Count(Four));

    [Fact]
    public void What_is_taken_is_gone_and_its_line_stays()
    {
        Stores stores = Stores.Of([new(Shim, 2)]).Without([new(Shim, 2)]);

        Assert.Equal("0 × shim 0.5 mm", string.Join(", ", stores.Parts));
    }

    [Fact]
    public void No_more_is_taken_than_there_is() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Stores.Of([new(Shim, 2)]).Without([new(Shim, 3)]));

    [Fact]
    public void A_count_below_nothing_is_none() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Stores.Of([new(Shim, -1)]));

    [Fact]
    public void Stores_do_not_change_when_others_are_made_of_them()
    {
        Stores stores = Stores.Of([new(Shim, 2)]);
        stores.And([new(Shim, 5)]);
        stores.Without([new(Shim, 1)]);

        Assert.Equal(2, stores.Count(Shim));
    }

    [Fact]
    public void A_heap_of_parts_is_counted_by_kind_and_size() => Assert.Equal(
        "1 × insert 4°, 2 × shim 0.5 mm, 1 × shim 2 mm, 1 × pin",
        string.Join(", ", PartCount.Of([Shim, new(PartKind.Pin, 0), new(PartKind.Shim, 2), Four, Shim])));
}
