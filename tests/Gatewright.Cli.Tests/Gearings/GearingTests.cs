using System.Text.Json;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Gearings;

/// <summary>Gearing in the terminal.</summary>
public sealed class GearingTests
{
    private static readonly string[] Single = ["gearing", "--span", "160", "--inboard", "88.5", "--oar-length", "288.5"];

    [Fact]
    public void An_eight_and_a_change_are_told_as_expected() => Expectation.Matches("gearing", ProgramRun.Of(
        "gearing", "--class", "8+", "--crew", "men", "--change", "spread=-1", "--change", "inboard=-1", "--width", "80").Output);

    [Fact]
    public void A_wish_is_told_as_expected() =>
        Expectation.Matches("gearing-plain", ProgramRun.Of([.. Single, "--want", "catch=+2", "--plain"]).Output);

    [Fact]
    public void All_of_it_is_written_for_programs_as_expected() => Expectation.Matches("gearing-json", ProgramRun.Of(
        "gearing", ExampleFiles.Rig, "--boat", "Dunlin", "--seat", "2", "--change", "spread=-1", "--want", "load=+1%", "--json").Output);

    /// <summary>As worked from the medians of the 2017 survey: plain 2.500, with the gate 2.564, lever 2.260, overlap 21.</summary>
    [Theory]
    [InlineData("gearing", 2.5)]
    [InlineData("gearing-with-gate", 2.564)]
    [InlineData("lever", 2.260)]
    [InlineData("overlap", 21)]
    public void A_single_of_the_survey_has_the_gearing_worked_from_it(string figure, double value)
    {
        using var told = JsonDocument.Parse(ProgramRun.Of([.. Single, "--json"]).Output);
        JsonElement found = told.RootElement.GetProperty("figures").EnumerateArray().Single(f => f.GetProperty("figure").GetString() == figure);

        // Half of the last figure printed.
        Assert.Equal(value, found.GetProperty("value").GetDouble(), 0.0005);
    }

    [Fact]
    public void What_is_out_of_reach_is_said_so_and_needs_attention()
    {
        ProgramRun run = ProgramRun.Of([.. Single, "--want", "catch=85", "--plain"]);

        Assert.Equal(1, run.Status);
        Assert.Contains("85.0 degrees is out of reach.", run.Output, StringComparison.Ordinal);
    }

    /// <summary>With the inboard alone and no further than 90 cm, that is what stops it, and how near one comes is told.</summary>
    [Fact]
    public void Only_what_is_allowed_is_set_and_the_bound_that_stops_it_is_named()
    {
        ProgramRun run = ProgramRun.Of([.. Single, "--want", "lever=2.1", "--allow", "inboard=86..90", "--plain"]);

        Assert.Equal(1, run.Status);
        Assert.Contains("The nearest: inboard +1.5 cm", run.Output, StringComparison.Ordinal);
        Assert.Contains("What stops it: inboard, not above 90 cm.", run.Output, StringComparison.Ordinal);
        using var told = JsonDocument.Parse(ProgramRun.Of([.. Single, "--want", "lever=2.1", "--allow", "inboard=86..90", "--json"]).Output);
        JsonElement bound = told.RootElement.GetProperty("wish").GetProperty("nearest").GetProperty("stoppedBy")[0];
        Assert.Equal(("inboard", 90.0, true), (bound.GetProperty("measure").GetString(), bound.GetProperty("bound").GetDouble(), bound.GetProperty("isMost").GetBoolean()));
    }

    [Theory]
    [InlineData("--allow", "inboard=90..86", "is nothing to set")]
    [InlineData("--allow", "reach", "is nothing to set")]
    [InlineData("--allow", "spread", "no measure of another kind of boat")]
    [InlineData("--change", "span=wide", "is no change")]
    [InlineData("--change", "reach=1", "is no change")]
    [InlineData("--want", "catch=+2%", "is no wish")]
    [InlineData("--want", "speed=5", "is no wish")]
    [InlineData("--change", "spread=1", "is no measure of a 1x")]
    [InlineData("--seat", "2", "is no seat of a 1x")]
    [InlineData("--arms", "5", "A rower of that reach could not row that rig")]
    public void What_cannot_be_meant_is_refused_with_what_was_expected(string option, string value, string said)
    {
        ProgramRun run = ProgramRun.Of([.. Single, option, value]);

        Assert.NotEqual(0, run.Status);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_rig_it_says_what_it_needs()
    {
        ProgramRun run = ProgramRun.Of("gearing", "--spread", "86");

        Assert.Equal(2, run.Status);
        Assert.Contains("expected --class, or --spread or --span with --inboard and --oar-length", run.Error, StringComparison.Ordinal);
    }
}
