using Gatewright.App.Keeping.Boats;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Views;

namespace Gatewright.App.Tests.Keeping;

public class BoatFormTests
{
    [Fact]
    public async Task Everything_that_is_wrong_is_said_at_once()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync([.. Four("Grebe", "B-7").Facts("grebe")]);

        Assert.Equal(["Name", "Class"], new BoatForm { Name = " " }.Problems(club.InHand.Club, null).Keys);
        Assert.Equal(
            new() { ["Name"] = "NameTaken", ["Code"] = "CodeTaken" },
            Four(" grebe ", "b-7").Problems(club.InHand.Club, null).ToDictionary());
    }

    [Fact]
    public async Task A_boat_is_not_taken_for_its_own_double()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync([.. Four("Grebe", "B-7").Facts("grebe")]);

        Assert.Empty(BoatForm.Of(club.InHand.Club, "grebe").Problems(club.InHand.Club, "grebe"));
    }

    [Fact]
    public async Task A_sweep_boat_records_the_side_of_each_seat()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        BoatForm form = Four("Grebe", null);
        form.Turn(form.Gates[1]);
        await club.InHand.RecordAsync([.. form.Facts("grebe")]);

        Assert.Equal(
            [new GatePlace(1, Side.Starboard), new(2, Side.Starboard), new(3, Side.Starboard), new(4, Side.Port)],
            BoatGates.Of(club.InHand.Club, new(club.InHand.Club, "grebe")));
    }

    [Fact]
    public async Task Only_what_changed_is_recorded()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync([.. Four("Grebe", "B-7").Facts("grebe")]);
        BoatForm form = BoatForm.Of(club.InHand.Club, "grebe");
        Assert.Empty(form.Facts("grebe"));

        form.Rack = "a1";
        form.IsOutOfUse = true;
        ThingSet set = Assert.IsType<ThingSet>(Assert.Single(form.Facts("grebe")));
        Assert.Equal(new() { ["rack"] = "a1", ["out-of-use"] = "yes" }, set.Fields.ToDictionary());
    }

    [Fact]
    public async Task A_scull_has_both_sides_and_records_none()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        var form = new BoatForm { Name = "Wren", Class = "2x" };

        Assert.False(form.HasSides);
        Assert.Equal(4, form.Gates.Count);
        Assert.Single(form.Facts("wren"));
    }

    private static BoatForm Four(string name, string? code) => new() { Name = name, Class = "4-", Code = code };
}
