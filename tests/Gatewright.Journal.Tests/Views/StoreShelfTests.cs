using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Views;

public class StoreShelfTests
{
    [Fact]
    public void Parts_stand_by_kind_and_size() => Assert.Equal(
        [("insert", 3m), ("insert", 4.5m), ("shim", 0.5m), ("washer", 1m), ("pin", 0m), ("bolt", 8m)],
        StoreShelf.Of(Of(
            new StockCounted("bolt", 8, 1),
            new StockCounted("pin", 0, 1),
            new StockCounted("washer", 1, 1),
            new StockCounted("insert", 4.5m, 1),
            new StockCounted("shim", 0.5m, 1),
            new StockCounted("insert", 3, 1))).Select(l => (l.Part, l.Size)));

    [Theory]
    [InlineData(3, false, false)]
    [InlineData(2, true, false)]
    [InlineData(1, true, false)]
    [InlineData(0, true, true)]
    public void What_open_jobs_will_take_is_not_left_over(int count, bool isLow, bool isShort)
    {
        StoreLine line = Assert.Single(StoreShelf.Of(Of(new StockCounted("insert", 4, count), Job("j1", 1))));
        Assert.Equal((1, isLow, isShort), (line.Wanted, line.IsLow, line.IsShort));
    }

    [Fact]
    public void A_part_that_is_wanted_and_was_never_counted_is_short()
    {
        StoreLine line = Assert.Single(StoreShelf.Of(Of(Job("j1", 2))));
        Assert.Equal((0, 2, true), (line.Count, line.Wanted, line.IsShort));
    }

    [Fact]
    public void What_a_job_took_it_no_longer_wants()
    {
        StoreLine line = Assert.Single(StoreShelf.Of(Of(new StockCounted("insert", 4, 5), Job("j1", 2), new StockChanged("insert", 4, -1, "j1"))));
        Assert.Equal((4, 1), (line.Count, line.Wanted));
    }

    [Fact]
    public void A_job_that_is_done_or_given_up_wants_nothing()
    {
        Club club = Of(new StockCounted("insert", 4, 5), Job("j1", 1), Job("j2", 1), new JobDone("j1"), new JobDropped("j2"));
        Assert.Equal(0, Assert.Single(StoreShelf.Of(club)).Wanted);
    }

    [Fact]
    public void A_club_says_itself_what_is_few()
    {
        Assert.False(Assert.Single(StoreShelf.Of(Of(new StockCounted("pin", 0, 2)))).IsLow);
        Club club = Of(new StockCounted("pin", 0, 2), new ThingSet(Things.Settings, StoreShelf.Group, new Dictionary<string, string?> { [StoreShelf.LowField] = "3" }));
        Assert.True(Assert.Single(StoreShelf.Of(club)).IsLow);
    }

    private static JobPlanned Job(string key, int inserts) =>
        new(key, "heron", Cause.GatePitch, "insert-swap", [], [new("insert", 4, inserts)], []);

    private static Club Of(params Fact[] facts) => ChangesTests.Of([.. facts.Select((f, i) => Journals.Entry(i, f, i + 1))]);
}
