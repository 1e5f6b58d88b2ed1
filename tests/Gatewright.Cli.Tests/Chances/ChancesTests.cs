using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Chances;

/// <summary>The table of chances shown, taught and reset.</summary>
public sealed partial class ChancesTests
{
    [Fact]
    public void The_defaults_are_shown_as_expected() => Expectation.Matches("chances", ProgramRun.Of("chances").Output);

    [Fact]
    public void They_are_told_in_words_as_expected() => Expectation.Matches("chances-plain", ProgramRun.Of("chances", "--plain").Output);

    [Fact]
    public void They_are_written_for_programs_as_expected() => Expectation.Matches("chances-json", ProgramRun.Of("chances", "--json").Output);

    [Fact]
    public void A_table_that_has_learnt_says_from_what()
    {
        using var file = new ChancesFile();
        file.Run("learn", ExampleFiles.Jobs);
        Expectation.Matches("chances-learnt-plain", file.Told(file.Run("--plain")));
    }

    [Fact]
    public void The_same_jobs_learnt_twice_count_once()
    {
        using var file = new ChancesFile();
        ProgramRun first = file.Run("learn", ExampleFiles.Jobs, "--json");
        string text = file.Text;
        ProgramRun second = file.Run("learn", ExampleFiles.Jobs, "--json");

        Assert.Equal((0, 0), (first.Status, second.Status));
        Assert.Equal((155, 155, 0), Jobs(first));
        Assert.Equal((155, 0, 155), Jobs(second));
        Assert.Equal(text, file.Text);
        Assert.Equal(["club.json"], file.Beside);
    }

    [Fact]
    public void A_reset_says_what_is_forgotten_and_keeps_it_beside()
    {
        using var file = new ChancesFile();
        file.Run("learn", ExampleFiles.Jobs);
        string taught = file.Text;
        ProgramRun reset = file.Run("reset", "--plain");
        file.Run("reset");

        Assert.Equal(0, reset.Status);
        Assert.Contains("Forgotten: 155 jobs from 2026-10-10 to 2026-10-11", reset.Output, StringComparison.Ordinal);
        Assert.Contains("chances.hullLevel: was 0.0654, now 0.03.", reset.Output, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(["club.json", "club.json.kept-1", "club.json.kept-2"], file.Beside);
        Assert.Equal(taught, file.Kept(1));
        Assert.Equal(file.Text, file.Kept(2));
        Assert.Equal(ProgramRun.Of("chances", "--plain").Lines[1..], file.Run("--plain").Lines[1..]);
    }

    [Fact]
    public void A_number_that_was_set_stays_set_while_jobs_are_learnt()
    {
        using var file = new ChancesFile();
        File.WriteAllText(file.Path, "{ \"format\": \"gatewright.chances/1\", \"chances\": { \"wrongSeat\": 0.2 } }");
        file.Run("learn", ExampleFiles.Jobs);

        Assert.Contains("0.2. Set in the file; the default is 0.05.", file.Run("--plain").Output, StringComparison.Ordinal);
        Assert.Contains("and 1 number that had been set.", file.Run("reset", "--plain").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_wrong_is_told_at_once_and_nothing_is_changed()
    {
        using var file = new ChancesFile();
        using var jobs = new TemporaryFile(["boat,found,date", "Heron,rust,May"]);
        File.WriteAllText(file.Path, "{ \"chances\": { \"rigger\": 1 } }");
        string before = file.Text;
        ProgramRun run = file.Run("learn", jobs.Path, "Data/missing.csv");

        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.Contains("$.format", run.Error, StringComparison.Ordinal);
        Assert.Contains("$.chances.rigger", run.Error, StringComparison.Ordinal);
        Assert.Contains("Data/missing.csv: there is no such file.", run.Error, StringComparison.Ordinal);
        Assert.Contains("line 2, column found: 'rust'", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("5 errors. Nothing was changed.\n", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, file.Text);
        Assert.Equal(["club.json"], file.Beside);
    }

    [Theory]
    [InlineData]
    [InlineData("reset")]
    public void A_table_that_is_not_there_cannot_be_shown_or_reset(params string[] command)
    {
        using var file = new ChancesFile();
        ProgramRun run = file.Run(command);
        Assert.Equal(ExitStatus.WrongInput, run.Status);
        Assert.Contains("there is no such file.", run.Error, StringComparison.Ordinal);
        Assert.Empty(file.Beside);
    }

    [Fact]
    public void A_table_that_cannot_be_written_is_told_of()
    {
        using var file = new ChancesFile();
        ProgramRun run = ProgramRun.Of("chances", "learn", ExampleFiles.Jobs, "--chances", Path.Combine(file.Path, "club.json"));
        Assert.Equal(ExitStatus.WrongInput, run.Status);
        Assert.Contains("cannot be written", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_of_the_finger_points_to_the_help_of_the_right_command() => Assert.EndsWith(
        "Try: gatewright chances learn --help\n", ProgramRun.Of("chances", "learn", "--chancs", "x").Error, StringComparison.Ordinal);

    [Theory]
    [InlineData("40")]
    [InlineData("69")]
    [InlineData("70")]
    [InlineData("100")]
    public void No_line_is_longer_than_the_width(string width)
    {
        using var file = new ChancesFile();
        file.Run("learn", ExampleFiles.Jobs);
        Assert.All(
            ProgramRun.Of("chances", "--chances", file.Path, "--width", width).Lines,
            line => Assert.True(CellText.Width(line) <= int.Parse(width, CultureInfo.InvariantCulture), line));
    }

    [Fact]
    public void Without_its_colours_a_coloured_page_is_the_plain_one() => Assert.Equal(
        ProgramRun.Of("chances").Output, Escapes.StripFrom(ProgramRun.Of(["chances"], new(Colours: Colours.Many)).Output));

    [Fact]
    public void In_words_it_has_no_sign_that_is_not_a_word() =>
        Assert.DoesNotMatch(NotPlain(), ProgramRun.Of("chances", "--plain").Output);

    private static (int Known, int Added, int Again) Jobs(ProgramRun run)
    {
        using JsonDocument told = JsonDocument.Parse(run.Output);
        JsonElement jobs = told.RootElement.GetProperty("jobs");
        return (jobs.GetProperty("known").GetInt32(), jobs.GetProperty("added").GetInt32(), jobs.GetProperty("again").GetInt32());
    }

    [GeneratedRegex("[^ -~\n]")]
    private static partial Regex NotPlain();
}
