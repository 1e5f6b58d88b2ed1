using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Device;

/// <summary>What the server would refuse never comes to lie on this device, whatever a page forgot to ask.</summary>
public class RecordingByRoleTests
{
    [Theory]
    [InlineData("coach")]
    [InlineData("crew")]
    [InlineData("a role of a newer server")]
    public async Task A_reading_is_not_taken_by_whoever_may_not(string role)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(role);

        NotAllowedException refused = await Assert.ThrowsAsync<NotAllowedException>(() => club.InHand.RecordAsync(
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.ByEye),
            new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Port, 4)));

        Assert.False(refused.HasLeft);
        Assert.Empty(club.InHand.Club.All());
    }

    [Fact]
    public async Task Of_several_facts_one_that_is_not_allowed_keeps_all_off_the_record()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("helper");

        await Assert.ThrowsAsync<NotAllowedException>(() => club.InHand.RecordAsync(new Held("teal", "knock"), new Released("teal", "looked at")));

        Assert.Empty(club.InHand.Club.All());
    }

    [Theory]
    [InlineData("helper", false)]
    [InlineData("keeper", true)]
    public async Task What_another_recorded_is_taken_back_by_a_keeper_alone(string role, bool may)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(role);
        Guid theirs = (await club.RecordElsewhereAsync(new StepDone("j", 0)))[0];

        Exception? refused = await Record.ExceptionAsync(() => club.InHand.RecordAsync(new Retracted(theirs)));

        Assert.Equal(may, refused is null);
        Assert.True(may || refused is NotAllowedException);
    }

    [Fact]
    public async Task What_one_recorded_oneself_one_takes_back()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("helper");
        Guid own = (await club.InHand.RecordAsync(new StepDone("j", 0)))[0];

        await club.InHand.RecordAsync(new Retracted(own));

        Assert.Contains(club.InHand.Club.All(), r => r.Fact is Retracted back && back.Entry == own);
    }

    [Fact]
    public async Task Whoever_has_left_records_nothing_and_reads_why()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.LeaveAsync();

        NotAllowedException refused = await Assert.ThrowsAsync<NotAllowedException>(() => club.InHand.RecordAsync(new Held("teal", "knock")));

        var texts = club.Page.Services.GetRequiredService<Texts<DeviceTexts>>();
        Assert.Equal(texts["HasLeft"], ShelfFaults.Told(refused, texts));
        Assert.NotEqual(texts["NotAllowed"], texts["HasLeft"]);
    }
}
