using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>The codes that files are written in, and the words that people read.</summary>
public sealed class WordsTests
{
    [Fact]
    public void Causes_have_the_trades_words_as_codes() => Assert.Equal(
        ["gate-pitch", "pin-aft", "pin-out", "rigger", "wrong-seat", "sleeve", "hull-level", "gauge-zero"],
        Causes.All.Select(c => c.Code()));

    [Fact]
    public void Reports_have_codes_of_their_own() =>
        Assert.Equal(ReportKinds.All.Count, ReportKinds.All.Select(k => k.Code()).Distinct().Count());

    [Fact]
    public void The_boat_shares_its_level_and_its_gauge() =>
        Assert.Equal([Cause.HullLevel, Cause.GaugeZero], Causes.All.Where(c => c.IsBoatWide()));

    [Fact]
    public void A_blade_is_what_crabs_and_washing_out_tell_of() => Assert.Equal(
        [ReportKind.CrabEarly, ReportKind.CrabAtFinish, ReportKind.WashesOut], ReportKinds.All.Where(k => k.IsOfTheBlade()));

    [Fact]
    public void A_story_reads_as_its_parts()
    {
        GatePlace gate = Boats.Port(4);
        Assert.Equal("none", new Story([], 1).ToString());
        Assert.Equal("pin-out at seat 4 port", new Story([new(Cause.PinOut, gate)], 1).ToString());
        Assert.Equal(
            "hull-level and gauge-zero of blue",
            new Story([new(Cause.HullLevel), new(Cause.GaugeZero, Gauge: "blue")], 1).ToString());
        Assert.Equal(
            "wrong-seat between seat 4 port and seat 5 starboard",
            new CausePart(Cause.WrongSeat, gate, Boats.Starboard(5)).ToString());
    }

    [Fact]
    public void Nothing_wrong_is_called_none() => Assert.Equal("none", new CauseProbability(null, 0.5).Code);
}
