using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Oars;

/// <summary>The pitch of an oar's blade in the gate it is rowed in.</summary>
public sealed class OarInGateTests
{
    [Fact]
    public async Task The_blade_has_the_gate_s_pitch_and_what_the_sleeve_adds_where_the_gate_was_read()
    {
        (Station station, Estimate gate, Estimate blade) = Assert.Single(await PitchesAsync("g1", "g2"));

        // Face 4.0 and sleeve 0.5 on a level boat with an upright pin, abeam: the whole half degree (docs/method.md, first-order form).
        Assert.Equal(Station.Abeam, station);
        Assert.Equal((4.0, 4.5), (gate.Value.Degrees, Math.Round(blade.Value.Degrees, 6)));
    }

    /// <summary>
    /// What two readings share adds up in their sum (JCGM 100:2008, 5.2.2): a gauge's unchecked zero, u 0.2, is in both, so that
    /// u² is 2 · 0.2² = 0.08 larger than with a gauge each.
    /// </summary>
    [Fact]
    public async Task One_gauge_that_read_gate_and_sleeve_is_off_by_the_same_in_both()
    {
        double one = Square(Assert.Single(await PitchesAsync("g1", "g1")).Blade);
        double two = Square(Assert.Single(await PitchesAsync("g1", "g2")).Blade);

        Assert.Equal(0.08, one - two, 1e-9);
    }

    [Fact]
    public async Task Where_the_gate_was_read_with_several_gauges_the_sleeve_s_own_counts()
    {
        Fact other = new ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 4m, Station.Abeam, Gauge: "g2");

        double shared = Square(Assert.Single(await PitchesAsync("g1", "g2", other)).Blade);
        double apart = Square(Assert.Single(await PitchesAsync("g1", "g3", other)).Blade);

        Assert.Equal(0.08, shared - apart, 1e-9);
    }

    [Fact]
    public async Task Of_an_oar_without_a_sleeve_or_a_seat_nothing_is_told()
    {
        (OarView oar, BoatCheck check) = await OarAsync([]);
        Assert.Empty(OarInGate.Pitches(oar, check));
    }

    private static async Task<IReadOnlyList<(Station Station, Estimate Gate, Estimate Blade)>> PitchesAsync(string gateGauge, string sleeveGauge, params Fact[] more)
    {
        (OarView oar, BoatCheck check) = await OarAsync([
            new ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 4m, Station.Abeam, Gauge: gateGauge),
            .. more,
            new OarRead("o", OarItem.Sleeve, 0.5m, Session: "s", Level: LevelBasis.Read, BowHigh: 0, Gauge: sleeveGauge)]);
        return OarInGate.Pitches(oar, check);
    }

    private static async Task<(OarView Oar, BoatCheck Check)> OarAsync(Fact[] facts)
    {
        Fact[] all =
        [
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new ThingSet(Things.Oar, "o", new Dictionary<string, string?> { ["boat"] = "teal", ["seat"] = "2", ["side"] = "port" }),
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4m, Station.Abeam, Gauge: "g4"),
            .. facts,
        ];
        Club club = Club.Empty(Journals.Club).With(all.Select((fact, i) => Journals.Entry(i + 1, fact, i + 1)));
        return (new OarsView(club).Oar("o")!, (await ShedVerdicts.Of(club).BoatAsync("teal"))!.Check!);
    }

    private static double Square(Estimate estimate) => estimate.U.Degrees * estimate.U.Degrees;
}
