using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.App.Tests.Round;

public sealed class ReadingDeskTests
{
    [Fact]
    public async Task What_is_taken_back_is_gone_from_the_boat_and_from_its_verdict()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new RoundStarted("round"));
        var desk = new ReadingDesk(club.InHand, RoundPlan.None, "round", "teal", null);
        GatePlace first = desk.Walk.Now!.Gate;

        await desk.RecordAsync(1.0m);
        Assert.Equal(Verdict.Stop, desk.Verdict!.Gates.Single(g => g.Gate == first).Verdict);
        await desk.UndoAsync();

        Assert.Empty(desk.Walk.Boat.Readings);
        Assert.Equal(first, desk.Walk.Now!.Gate);
        Assert.DoesNotContain(desk.Verdict?.Gates ?? [], g => g.Gate == first);

        await desk.RecordAsync(4.0m);
        Assert.Equal(Verdict.Good, desk.Verdict!.Gates.Single(g => g.Gate == first).Verdict);
    }

    /// <summary>One was being read here when the other laid it otherwise; who opens it now sees it as it lies.</summary>
    [Fact]
    public async Task What_another_device_says_of_how_the_boat_lies_holds_on_a_desk_that_was_open()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new RoundStarted("round"));
        var desk = new ReadingDesk(club.InHand, RoundPlan.None, "round", "teal", null);
        await desk.RecordAsync(4.0m);

        await club.RecordElsewhereAsync(new BoatLaid("there", "teal", Lie.Inverted, LevelBasis.BubbleCentred, Round: "round", Moved: true));
        Assert.True(desk.Look());

        Assert.Equal(new Laying(Lie.Inverted, LevelBasis.BubbleCentred), desk.Laying);
        Assert.Equal(new ReadingDesk(club.InHand, RoundPlan.None, "round", "teal", null).Laying, desk.Laying);
        await desk.RecordAsync(4.0m);
        Assert.Equal("there", ((ReadingTaken)desk.Walk.Boat.Last!.Fact).Lying);
    }

    [Fact]
    public async Task Boats_read_beside_the_plan_stand_in_the_order_in_which_they_were_laid()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        string[] boats = [.. Enumerable.Range(10, 20).Reverse().Select(n => $"b{n}")];
        foreach (string boat in boats)
        {
            await club.InHand.RecordAsync(new BoatLaid(boat, boat, Lie.Upright, LevelBasis.ByEye, Round: "round"));
        }

        Assert.Equal(boats, RoundRow.Of(club.InHand.Club, "round", []).Select(r => r.View.Key));
    }
}
