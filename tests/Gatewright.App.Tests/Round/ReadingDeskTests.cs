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
}
