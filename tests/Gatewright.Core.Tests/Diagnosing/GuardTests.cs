using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>What a diagnosis refuses, and what it says then; and settings at the edge of what it takes.</summary>
public sealed class GuardTests
{
    private static readonly BoatReadings Any = Eight([Station.Abeam], (seat, _) => seat == 4 ? 2 : 4);

    [Fact]
    public void A_boat_of_which_nothing_was_read_has_no_diagnosis()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(() => Diagnose(Boat("8+")));
        Assert.StartsWith("Nothing was read on boat.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_gate_that_was_not_read_nothing_is_forecast()
    {
        Diagnosis diagnosis = Diagnose(Boat("8+", Read(Gate(1), Station.Catch, 4)));
        ArgumentException error = Assert.Throws<ArgumentException>(() => diagnosis.At(Gate(4), OarAngle.FromDegrees(0)));
        Assert.StartsWith("Nothing was read at seat 4 port: there is nothing to expect of it.", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.0, "The chance of pin-aft is 1: it must lie from 0 to below 1.")]
    [InlineData(-0.1, "The chance of pin-aft is -0.1: it must lie from 0 to below 1.")]
    [InlineData(double.NaN, "The chance of pin-aft is NaN: it must lie from 0 to below 1.")]
    public void A_prior_chance_that_is_none_is_refused(double chance, string message)
    {
        DiagnosingSettings settings = DiagnosingSettings.Default with { Chances = new() { PinAft = chance } };
        Assert.Equal(message, Assert.Throws<ArgumentException>(() => Diagnose(Any, settings: settings)).Message);
    }

    [Fact]
    public void A_cause_of_no_chance_is_never_told()
    {
        DiagnosingSettings settings = DiagnosingSettings.Default with { Chances = new() { PinAft = 0 } };
        Diagnosis diagnosis = Diagnose(Any, settings: settings);
        Assert.Equal(0, diagnosis.Of(Cause.PinAft, Gate(4)));
        Assert.DoesNotContain(diagnosis.At(Gate(4)).Causes, c => c.Cause == Cause.PinAft);
        Assert.True(diagnosis.Of(Cause.GatePitch, Gate(4)) > 0.3);
    }

    /// <summary>A cause that throws nothing reads like nothing wrong, and stays as likely as it was.</summary>
    [Fact]
    public void A_cause_that_throws_nothing_keeps_its_odds_against_none()
    {
        DiagnosingSettings settings = DiagnosingSettings.Default with { Spreads = new() { GaugeZero = Angle.Zero } };
        IReadOnlyList<Story> stories = Diagnose(Any, settings: settings).Stories;
        double none = stories.Single(s => s.IsNone).Probability;
        double zero = stories.Single(s => s.Parts is [{ Cause: Cause.GaugeZero }]).Probability;
        Assert.Equal(0.02 / 0.98, zero / none, 1e-9);
    }

    [Theory]
    [InlineData(1.5)]
    [InlineData(-0.5)]
    [InlineData(double.NaN)]
    public void A_reports_chance_that_is_none_is_refused(double chance)
    {
        ReportLikelihoods knock = new() { KnockIfRigger = chance };
        ReportLikelihoods curve = new() { CrabEarly = new(2, 1, 0.03, chance) };
        string expected = FormattableString.Invariant($"is {chance}: it must lie from 0 to 1.");
        Assert.EndsWith("knock " + expected, Told(knock, new Report(ReportKind.Knock, Gate(4))), StringComparison.Ordinal);
        Assert.EndsWith("crab-early " + expected, Told(curve, new Report(ReportKind.CrabEarly, Gate(4))), StringComparison.Ordinal);
    }

    [Fact]
    public void What_no_story_allows_is_said()
    {
        string message = Told(new() { DownToOneSide = new(1, 0.5, 0, 0) }, new Report(ReportKind.DownToOneSide, null, Side.Port));
        Assert.Equal("No story allows what was read and reported: is a chance set to 0?", message);
    }

    [Fact]
    public void Two_readings_without_noise_that_repeat_each_other_are_refused()
    {
        Gauge exact = new("exact", Angle.Zero, Angle.Zero, GaugeZero.Assumed(Angle.Zero));
        BoatReadings twice = Boat("2-", Read(ReadItem.PinAft, Gate(1), 1, gauge: exact), Read(ReadItem.PinAft, Gate(1), 1, gauge: exact));
        ArgumentException error = Assert.Throws<ArgumentException>(() => Diagnose(twice));
        Assert.Equal(
            "Two readings repeat each other without noise: a gauge needs a resolution or a repeatability above 0.", error.Message);
    }

    /// <summary>Wild readings make no exception and no NaN: something is wrong, and it says so.</summary>
    [Theory]
    [InlineData(-40)]
    [InlineData(60)]
    public void Readings_that_no_boat_shows_are_still_weighed(double degrees)
    {
        Diagnosis diagnosis = Diagnose(Eight(Stations.All, (seat, _) => seat == 4 ? degrees : 4));
        Assert.True(diagnosis.At(Gate(4)).Wrong > 0.99);
        Assert.All(diagnosis.Gates, g => Assert.All(g.Causes, c => Assert.InRange(c.Probability, 0, 1)));
        Assert.True(double.IsFinite(diagnosis.At(Gate(4)).GatePitch.U.Degrees));
    }

    [Fact]
    public void A_story_of_many_lyings_opens_more_unknowns_than_most()
    {
        Reading[] readings = [.. Enumerable.Range(1, 12).Select(day =>
            Read(Gate(1), Station.Catch, 6, Upright with { Date = new DateOnly(2020, 1, day) }))];
        BoatReadings boat = Boat("2-", readings);
        StoryWeights weights = Diagnose(boat).Weights;
        var dense = new DenseModel(boat, BoatContext.None);
        DenseStory hull = dense.Stories().Single(s => s.Key == "hull-level");
        int story = Enumerable.Range(0, weights.Count).Single(i => weights.Parts(i) is [{ Part.Cause: Cause.HullLevel }]);
        Assert.Equal(24, weights.Table.Unknowns(story).Length);
        Assert.Equal(dense.LogEvidence(hull), weights.Kernel.LogDensity + weights.Table.LogGain(story), 1e-6);
    }

    private static string Told(ReportLikelihoods likelihoods, Report report) => Assert.Throws<ArgumentException>(() => Diagnose(
        Any, new() { Reports = [report] }, DiagnosingSettings.Default with { Reports = likelihoods })).Message;
}
