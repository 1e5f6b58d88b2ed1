using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.App.Tests.Round;

/// <summary>A reading that was asked about as a slip does not stay beside the one that was taken to put it right.</summary>
public sealed class SlipReadAgainTests
{
    [Fact]
    public async Task A_slip_is_taken_back_with_the_reading_that_puts_it_right()
    {
        await using ClubOnDevice club = await WithTealAsync();
        ReadingDesk desk = await SlippedAsync(club);

        desk.GoTo(desk.Walk.Order[0]);
        await desk.RecordAsync(4.0m);

        Assert.Equal([4.0m], desk.Walk.Boat.Values(desk.Walk.Order[0]));
        Assert.Equal(3.5m, desk.Told!.Before);
        Assert.False(desk.Told.IsAsked);
        Assert.Equal(-1.5m, desk.Told.Slip);
    }

    [Fact]
    public async Task It_is_so_after_the_page_was_loaded_anew_in_between()
    {
        await using ClubOnDevice club = await WithTealAsync();
        await SlippedAsync(club);

        ReadingDesk again = Desk(club);
        again.GoTo(again.Walk.Order[0]);
        await again.RecordAsync(4.0m);

        Assert.Equal([4.0m], again.Walk.Boat.Values(again.Walk.Order[0]));
    }

    [Fact]
    public async Task Undone_the_slip_is_there_again_and_still_asked_about_even_by_a_page_loaded_anew()
    {
        await using ClubOnDevice club = await WithTealAsync();
        ReadingDesk desk = await SlippedAsync(club);
        ReadingStep step = desk.Walk.Order[0];
        desk.GoTo(step);
        await desk.RecordAsync(4.0m);

        ReadingDesk again = Desk(club);
        await again.UndoAsync();
        Assert.Equal([-1.5m], again.Walk.Boat.Values(step));
        Assert.Equal(step, again.Walk.Now);
        Assert.Equal((4.0m, -1.5m), (again.TakenBack!.Value, again.TakenBack.Slip));

        await again.RecordAsync(3.0m);
        Assert.Equal([3.0m], again.Walk.Boat.Values(step));
        await again.UndoAsync();
        await again.UndoAsync();
        Assert.Empty(again.Walk.Boat.Values(step));
    }

    [Fact]
    public async Task What_was_taken_back_by_hand_does_not_come_back_with_the_next_undo()
    {
        await using ClubOnDevice club = await WithTealAsync();
        ReadingDesk desk = await SlippedAsync(club);
        ReadingStep step = desk.Walk.Order[0];
        await desk.UndoAsync();
        await desk.RecordAsync(4.0m);
        await desk.UndoAsync();

        Assert.Empty(desk.Walk.Boat.Values(step));
    }

    [Fact]
    public async Task Read_once_more_and_found_so_it_is_no_slip()
    {
        await using ClubOnDevice club = await WithTealAsync();
        ReadingDesk desk = await SlippedAsync(club);
        desk.GoTo(desk.Walk.Order[0]);
        await desk.RecordAsync(-1.0m);

        Assert.Equal([-1.5m, -1.0m], desk.Walk.Boat.Values(desk.Walk.Order[0]));
    }

    [Fact]
    public async Task Kept_it_stays_and_the_journal_says_so_to_whoever_reads_there_next()
    {
        await using ClubOnDevice club = await WithTealAsync();
        ReadingDesk desk = await SlippedAsync(club);
        Guid kept = desk.Told!.Entry!.Value;

        await desk.KeepAsync();

        Assert.False(desk.Told!.IsAsked);
        Assert.Equal(new ReadingKept("teal", kept), Assert.Single(club.Recorded<ReadingKept>()));
        desk.GoTo(desk.Walk.Order[0]);
        await desk.RecordAsync(4.0m);
        Assert.Equal([-1.5m, 4.0m], desk.Walk.Boat.Values(desk.Walk.Order[0]));
        await desk.UndoAsync();

        ReadingDesk again = Desk(club);
        again.GoTo(again.Walk.Order[0]);
        await again.RecordAsync(4.0m);
        Assert.Equal([-1.5m, 4.0m], again.Walk.Boat.Values(again.Walk.Order[0]));
    }

    [Fact]
    public async Task Kept_it_can_still_be_undone()
    {
        await using ClubOnDevice club = await WithTealAsync();
        ReadingDesk desk = await SlippedAsync(club);
        await desk.KeepAsync();

        await desk.UndoAsync();

        Assert.Empty(desk.Walk.Boat.Values(desk.Walk.Order[0]));
        Assert.Equal(-1.5m, desk.TakenBack!.Value);
    }

    [Fact]
    public async Task In_another_lying_it_stays()
    {
        await using ClubOnDevice club = await WithTealAsync();
        ReadingDesk desk = await SlippedAsync(club);
        await desk.LayAsync(desk.Laying with { Lie = Lie.Inverted }, isMoved: true);
        desk.GoTo(desk.Walk.Order[0]);
        await desk.RecordAsync(4.0m);

        Assert.Equal([-1.5m, 4.0m], desk.Walk.Boat.Values(desk.Walk.Order[0]));
    }

    [Fact]
    public async Task A_reading_that_nobody_asked_about_stays_beside_the_next()
    {
        await using ClubOnDevice club = await WithTealAsync();
        ReadingDesk desk = Desk(club);
        await desk.RecordAsync(5.0m);
        desk.GoTo(desk.Walk.Order[0]);
        await desk.RecordAsync(3.0m);

        Assert.Equal([5.0m, 3.0m], desk.Walk.Boat.Values(desk.Walk.Order[0]));
    }

    private static ReadingDesk Desk(ClubOnDevice club) => new(club.InHand, RoundPlan.None, "round", "teal", null);

    /// <summary>The first gate was read with 3.5° in an earlier round, and in this with −1.5° where 1.5° was meant.</summary>
    private static async Task<ReadingDesk> SlippedAsync(ClubOnDevice club)
    {
        ReadingDesk desk = Desk(club);
        await desk.RecordAsync(-1.5m);
        Assert.True(desk.Told!.IsAsked);
        return desk;
    }

    private static async Task<ClubOnDevice> WithTealAsync()
    {
        ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new RoundStarted("before"),
            new RoundStarted("round"));
        var before = new ReadingDesk(club.InHand, RoundPlan.None, "before", "teal", null);
        await before.RecordAsync(3.5m);
        return club;
    }
}
