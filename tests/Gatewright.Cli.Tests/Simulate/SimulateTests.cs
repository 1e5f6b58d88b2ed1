using System.Text.Json;
using System.Text.RegularExpressions;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Simulate;

public sealed partial class SimulateTests
{
    private static readonly string[] Small = ["simulate", "--class", "2x", "--boats", "20", "--seed", "3"];

    private static readonly string[] Smallest = ["simulate", "--class", "1x", "--boats", "10"];

    [Fact]
    public void A_small_simulation_is_drawn_as_expected() => Expectation.Matches("simulate", ProgramRun.Of(Small).Output);

    [Fact]
    public void It_is_told_in_words_as_expected() => Expectation.Matches("simulate-plain", ProgramRun.Of([.. Small, "--plain"]).Output);

    [Fact]
    public void It_is_written_for_programs_as_expected() => Expectation.Matches("simulate-json", ProgramRun.Of([.. Small, "--json"]).Output);

    [Fact]
    public void The_same_seed_draws_the_same_boats_and_another_seed_others()
    {
        Assert.Equal(Json(Smallest), Json(Smallest));
        Assert.NotEqual(Json(Smallest), Json([.. Smallest, "--seed", "2"]));
    }

    [Fact]
    public void Every_pairing_of_cause_and_boat_stands_in_one_band()
    {
        using JsonDocument document = JsonDocument.Parse(Json(Smallest));
        int causes = document.RootElement.GetProperty("reliability").EnumerateArray().Sum(band => band.GetProperty("causes").GetInt32());

        // A single has two gates of four causes, a level and a gauge.
        Assert.Equal(10 * 10, causes);
    }

    /// <remarks>A scull's gates read abeam alone do not tell a lean out at all, and three causes not apart.</remarks>
    [Fact]
    public void Fewer_stations_find_the_true_cause_less_often()
    {
        string[] args = ["simulate", "--class", "1x", "--boats", "60"];

        Assert.True(CauseFirst([.. args, "--stations", "abeam"]) < CauseFirst(args) - 0.2);
    }

    [Theory]
    [InlineData("40")]
    [InlineData("78")]
    [InlineData("79")]
    [InlineData("100")]
    public void No_line_is_longer_than_the_width(string width) => Assert.All(
        ProgramRun.Of([.. Smallest, "--width", width]).Lines,
        line => Assert.True(CellText.Width(line) <= int.Parse(width, System.Globalization.CultureInfo.InvariantCulture), line));

    [Fact]
    public void Without_its_colours_a_coloured_page_is_the_plain_one() => Assert.Equal(
        ProgramRun.Of(Smallest).Output, Escapes.StripFrom(ProgramRun.Of(Smallest, new(Colours: Colours.Many)).Output));

    [Fact]
    public void In_words_it_has_no_sign_that_is_not_a_word() =>
        Assert.DoesNotMatch(NotPlain(), ProgramRun.Of([.. Smallest, "--plain"]).Output);

    [Theory]
    [InlineData("--boats", "9", "--boats: '9' is not a whole number from 10 to 10000.")]
    [InlineData("--boats", "10001", "--boats: '10001' is not a whole number from 10 to 10000.")]
    [InlineData("--boats", "12.5", "--boats: '12.5' is not a whole number from 10 to 10000.")]
    [InlineData("--seed", "-1", "--seed: '-1' is not a whole number from 0 to 1000000.")]
    public void A_number_out_of_range_is_wrong_input(string option, string value, string message)
    {
        ProgramRun run = ProgramRun.Of("simulate", option, value);

        Assert.Equal(ExitStatus.WrongInput, run.Status);
        Assert.StartsWith(message, run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
    }

    [Theory]
    [InlineData("--class", "9x")]
    [InlineData("--stations", "middle")]
    [InlineData("--first", "middle")]
    public void A_word_that_there_is_not_is_wrong_input(string option, string value)
    {
        ProgramRun run = ProgramRun.Of("simulate", option, value);

        Assert.Equal(ExitStatus.WrongInput, run.Status);
        Assert.Contains(value, run.Error, StringComparison.Ordinal);
    }

    private static string Json(params string[] args) => ProgramRun.Of([.. args, "--json"]).Output;

    private static double CauseFirst(params string[] args)
    {
        using JsonDocument document = JsonDocument.Parse(Json(args));
        return document.RootElement.GetProperty("ranking").GetProperty("cause").GetProperty("value").GetDouble();
    }

    [GeneratedRegex("[^ -~\n]")]
    private static partial Regex NotPlain();
}
