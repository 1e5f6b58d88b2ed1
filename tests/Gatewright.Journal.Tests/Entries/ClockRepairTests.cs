using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Entries;

public sealed class ClockRepairTests
{
    private const long Start = 1_000_000;

    /// <summary>Wall clocks that mostly go on, sometimes stand still and sometimes go back.</summary>
    private static Gen<long[]> Walls { get; } =
        from steps in Gen.Choose(-5, 20).NonEmptyListOf()
        select steps.Aggregate(new List<long> { Start }, (walls, step) => [.. walls, walls[^1] + step]).ToArray();

    [Property(MaxTest = 500)]
    public Property Order_is_kept_among_them_and_after_what_was_seen() => Prop.ForAll(
        (from walls in Walls
         from offset in Gen.Choose(-2_000_000, 2_000_000)
         from seen in Gen.Choose(0, 2_000_000)
         from counter in Gen.Choose(0, 3)
         select (walls, offset, seen: new HybridTime(seen, counter))).ToArbitrary(),
        given =>
        {
            Entry[] made = Made(given.walls, default);
            (IReadOnlyList<Entry> repaired, HybridClock after) = ClockRepair.Restamp(made, TimeSpan.FromMilliseconds(given.offset), given.seen);
            return repaired.Select(e => e.Id).SequenceEqual(made.Select(e => e.Id))
                && repaired.Zip(made).All(p => p.First.Body.Span.SequenceEqual(p.Second.Body.Span) && p.First.Member == p.Second.Member && p.First.Kind == p.Second.Kind)
                && repaired.Select(e => e.Time).Prepend(given.seen).Zip(repaired.Select(e => e.Time)).All(p => p.First < p.Second)
                && after.Last == repaired[^1].Time;
        });

    [Property(MaxTest = 500)]
    public Property A_clock_that_was_ahead_leaves_the_times_of_one_that_was_right() => Prop.ForAll(
        (from walls in Walls
         from ahead in Gen.Choose(0, 1_000_000)
         from seen in Gen.Choose(0, 2_000_000)
         select (walls, ahead, seen: new HybridTime(Math.Min(seen, Start - 1), 0))).ToArbitrary(),
        given =>
        {
            Entry[] right = Made(given.walls, given.seen);
            Entry[] wrong = Made([.. given.walls.Select(w => w + given.ahead)], given.seen);
            return ClockRepair.Restamp(wrong, TimeSpan.FromMilliseconds(-given.ahead), given.seen).Entries.Select(e => e.Time)
                .SequenceEqual(right.Select(e => e.Time));
        });

    [Theory]
    [InlineData(-400_000)]
    [InlineData(4_000_000)]
    public void A_clock_off_by_a_thousand_years_leaves_times_that_entries_can_have(double days)
    {
        IReadOnlyList<Entry> repaired = ClockRepair.Restamp(Made([Start, Start + 1], default), TimeSpan.FromDays(days), default).Entries;
        Assert.All(repaired, e => Assert.InRange(e.Time.Milliseconds, 0, EntryLimits.LatestMilliseconds));
    }

    [Fact]
    public void Entries_out_of_order_are_refused() => Assert.Throws<ArgumentException>(
        () => ClockRepair.Restamp([.. Made([Start, Start + 1], default).Reverse()], TimeSpan.Zero, default));

    private static Entry[] Made(long[] walls, HybridTime seen)
    {
        var clock = new HybridClock(seen);
        return [.. walls.Select((wall, i) =>
        {
            (HybridTime time, clock) = clock.Tick(DateTimeOffset.FromUnixTimeMilliseconds(wall));
            return Journals.Entry(i, new Held("heron", "knocked"), time.Milliseconds, time.Counter).Entry;
        })];
    }
}
