using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;

namespace Gatewright.Words.Tests.Suspected;

/// <summary>Causes with their direction and place.</summary>
public class CauseWordsTests
{
    private static readonly GatePlace Gate = new(3, Side.Port);

    [Theory]
    [InlineData(Cause.PinAft, 2, 0, "pin leans aft (its top to the stern)", "Dollenstift nach hinten geneigt (sein Kopf zum Heck)")]
    [InlineData(Cause.PinAft, -2, 0, "pin leans forward (its top to the bow)", "Dollenstift nach vorn geneigt (sein Kopf zum Bug)")]
    [InlineData(Cause.PinOut, 0, 2, "pin leans out (its top away from the hull)", "Dollenstift nach außen geneigt (sein Kopf vom Rumpf weg)")]
    [InlineData(Cause.PinOut, 0, -2, "pin leans in (its top towards the hull)", "Dollenstift nach innen geneigt (sein Kopf zum Rumpf hin)")]
    [InlineData(Cause.Rigger, -2, 2, "rigger knocked or mounted wrong (its pin's top away from the hull and to the bow)", "Ausleger angestoßen oder falsch angebaut (Kopf des Dollenstifts vom Rumpf weg und zum Bug)")]
    [InlineData(Cause.Rigger, 0.1, 0.1, "rigger knocked or mounted wrong", "Ausleger angestoßen oder falsch angebaut")]
    [InlineData(Cause.WrongSeat, 0, 0, "rigger on another's place", "Ausleger auf fremdem Platz")]
    public void A_cause_says_which_way(Cause cause, double aft, double leansOut, string english, string german)
    {
        var gate = new GateDiagnosis(
            Gate, Estimate.FromDegrees(4, 0.3), Estimate.FromDegrees(aft, 0.4), Estimate.FromDegrees(leansOut, 0.4), [new(cause, 0.9), new(null, 0.1)]);

        Assert.Equal([new(english, 0.9), new("nothing wrong with this gate", 0.1)], Wording.English.Causes.Of(gate));
        Assert.Equal([new(german, 0.9), new("nichts falsch an dieser Dolle", 0.1)], Wording.German.Causes.Of(gate));
    }

    [Fact]
    public void What_is_hardly_likely_is_not_told()
    {
        var gate = new GateDiagnosis(
            Gate, Estimate.FromDegrees(4, 0.3), default, default, [new(Cause.GatePitch, 0.9), new(null, 0.051), new(Cause.PinAft, 0.049)]);

        Assert.Equal(2, Wording.English.Causes.Of(gate).Count());
    }

    [Theory]
    [InlineData(2.9, "and the pin leans 2.9° ± 0.4 out and 0.0° ± 0.4 aft or forward.")]
    [InlineData(-2.9, "and the pin leans 2.9° ± 0.4 in and 0.0° ± 0.4 aft or forward.")]
    public void A_lean_has_a_direction_and_no_sign(double leansOut, string words)
    {
        var gate = new GateDiagnosis(
            Gate, Estimate.FromDegrees(4, 0.3), Estimate.FromDegrees(0.04, 0.4), Estimate.FromDegrees(leansOut, 0.4), [new(null, 1)]);

        Assert.EndsWith(words, Wording.English.Causes.ProbablyIs(gate), StringComparison.Ordinal);
    }

    /// <remarks>What brings a pin aft is for one that leans forward; an insert moves no pin.</remarks>
    [Theory]
    [InlineData(Cause.PinAft, 2, 0, "pin leans forward (its top to the bow)")]
    [InlineData(Cause.PinAft, -2, 0, "pin leans aft (its top to the stern)")]
    [InlineData(Cause.PinOut, 0, 2, "pin leans in (its top towards the hull)")]
    [InlineData(Cause.PinOut, 0, -2, "pin leans out (its top away from the hull)")]
    [InlineData(Cause.PinOut, 0, 0, "pin leans out or in")]
    [InlineData(Cause.WrongSeat, 0, 0, "rigger on another's place")]
    public void What_a_remedy_is_for_leans_against_what_it_does(Cause cause, double aft, double outwards, string said)
    {
        var remedy = new Remedy(RemedyKind.PinFootShim, new(cause, Gate), GateState.FromDegrees(0, aft, outwards), [], [], 20, []);

        Assert.Equal(said, Wording.English.Causes.Of(remedy));
    }

    [Theory]
    [InlineData(0.01, "Read upright, it probably lay level from bow to stern within ± 0.2° and 0.6° ± 0.2 port low", "Aufrecht gemessen lag es wahrscheinlich so: von Bug bis Heck waagerecht auf ± 0,2° und Backbord 0,6° ± 0,2 tief")]
    [InlineData(-0.4, "Read upright, it probably lay 0.4° ± 0.2 bow low and 0.6° ± 0.2 port low", "Aufrecht gemessen lag es wahrscheinlich so: Bug 0,4° ± 0,2 tief und Backbord 0,6° ± 0,2 tief")]
    public void A_boat_that_lay_level_lay_neither_high_nor_low(double bowHigh, string english, string german)
    {
        var level = new LevelDiagnosis(new(Lie.Upright, new HullLevel.ByEye()), Estimate.FromDegrees(bowHigh, 0.2), Estimate.FromDegrees(0.6, 0.2));

        Assert.Equal(english, Wording.English.Shared.Lay(level));
        Assert.Equal(german, Wording.German.Shared.Lay(level));
    }

    [Fact]
    public void A_story_is_told_with_its_places()
    {
        var story = new Story([new(Cause.Rigger, Gate), new(Cause.HullLevel)], 0.4);

        Assert.Equal(
            "rigger knocked or mounted wrong at seat 3 port and the boat lay otherwise than its level says", Wording.English.Causes.Story(story));
        Assert.Equal(
            "Ausleger angestoßen oder falsch angebaut an Platz 3 Backbord und das Boot lag anders als angegeben", Wording.German.Causes.Story(story));
        Assert.Equal("nothing is wrong", Wording.English.Causes.Story(new([], 1)));
    }

    [Fact]
    public void A_gauge_is_named_where_it_has_a_name()
    {
        Assert.Equal("a gauge off its zero (blue)", Wording.English.Causes.Some(new(Cause.GaugeZero, Gauge: "blue")));
        Assert.Equal("a gauge off its zero", Wording.English.Causes.Some(new(Cause.GaugeZero, Gauge: string.Empty)));
        Assert.Equal("a wrong insert at seat 3 port", Wording.English.Causes.Some(new(Cause.GatePitch, Gate)));
    }
}
