using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Reporting;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Tests.Rounds;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Standing;

/// <summary>A boat that was judged before is looked at again when something came to any shelf that it is read from.</summary>
public sealed class ShelvesTests
{
    private readonly RoundClubs _clubs = RoundClubs.Of("2-");

    public ShelvesTests() => _clubs.ReadAll(4, RoundClubs.Day);

    /// <summary>It is filed with the gate, and the boat's own shelf is as it was.</summary>
    [Fact]
    public async Task Damage_noted_on_a_gate_is_told_of_its_boat()
    {
        ShedVerdicts shed = ShedVerdicts.Of(_clubs.Club);
        Assert.False(OpenReports.HasDamage((await shed.BoatAsync(RoundClubs.Boat))!.View));

        GatePlace gate = _clubs.Gates[0];
        _clubs.Add(Damage.Note(Things.Gate, Things.GateKey(RoundClubs.Boat, gate), gate, "cracked", Wording.English));

        Assert.True(OpenReports.HasDamage((await shed.With(_clubs.Club, teaches: false).BoatAsync(RoundClubs.Boat))!.View));
    }

    [Fact]
    public async Task A_boat_to_which_nothing_came_is_kept()
    {
        ShedVerdicts shed = ShedVerdicts.Of(_clubs.Club);
        BoatStanding before = (await shed.BoatAsync(RoundClubs.Boat))!;

        _clubs.Add(new Held("teal", "knocked"));

        Assert.Same(before, await shed.With(_clubs.Club, teaches: false).BoatAsync(RoundClubs.Boat));
    }
}
