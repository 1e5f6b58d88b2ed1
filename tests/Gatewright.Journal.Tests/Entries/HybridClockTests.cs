using FsCheck.Xunit;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Tests.Entries;

public sealed class HybridClockTests
{
    [Property]
    public void Each_time_given_out_is_greater_than_all_before_whatever_the_wall_clock_does(int[] wallClock)
    {
        var clock = default(HybridClock);
        foreach (int ms in wallClock)
        {
            (HybridTime time, HybridClock after) = clock.Tick(DateTimeOffset.FromUnixTimeMilliseconds(ms));
            Assert.True(time > clock.Last);
            clock = after;
        }
    }

    [Property]
    public void A_time_given_out_after_another_was_seen_is_greater_than_it(int seenMs, byte counter, int nowMs)
    {
        var seen = new HybridTime(Math.Abs((long)seenMs), counter);
        (HybridTime time, _) = default(HybridClock).Seen(seen).Tick(DateTimeOffset.FromUnixTimeMilliseconds(nowMs));
        Assert.True(time > seen);
    }

    [Fact]
    public void A_wall_clock_that_goes_on_starts_the_counter_anew()
    {
        (HybridTime time, _) = new HybridClock(new(1000, 7)).Tick(DateTimeOffset.FromUnixTimeMilliseconds(1001));
        Assert.Equal(new HybridTime(1001, 0), time);
    }

    [Fact]
    public void A_wall_clock_that_stands_still_or_goes_back_counts_on()
    {
        (HybridTime time, _) = new HybridClock(new(1000, 7)).Tick(DateTimeOffset.FromUnixTimeMilliseconds(400));
        Assert.Equal(new HybridTime(1000, 8), time);
    }

    [Fact]
    public void A_counter_that_has_come_to_its_end_borrows_from_the_next_millisecond()
    {
        (HybridTime time, _) = new HybridClock(new(1000, int.MaxValue)).Tick(DateTimeOffset.FromUnixTimeMilliseconds(400));
        Assert.Equal(new HybridTime(1001, 0), time);
    }
}
