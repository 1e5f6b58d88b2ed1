using Gatewright.Cli.Drawing;
using Gatewright.Cli.Mend.Words;
using Gatewright.Cli.Terminals;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Planning;

namespace Gatewright.Cli.Tests.Mend;

public sealed class MendDrawnTests
{
    [Fact]
    public void A_plan_for_a_small_shed_is_drawn_as_expected() => Expectation.Matches(
        "mend", ProgramRun.Of("mend", ExampleFiles.Small, "--stores", "Data/stores.csv").Output);

    [Fact]
    public void Without_a_word_about_the_shelf_all_is_bought() =>
        Expectation.Matches("mend-bare-shelf", ProgramRun.Of("mend", ExampleFiles.Small).Output);

    [Fact]
    public void A_screen_too_narrow_to_draw_on_is_written_on() => Expectation.Matches(
        "mend-40-columns", ProgramRun.Of("mend", ExampleFiles.Small, "--stores", "Data/stores.csv", "--width", "40").Output);

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void No_line_is_longer_than_the_width(string file)
    {
        foreach (int width in (int[])[40, 59, 60, 80, 131])
        {
            ProgramRun run = ProgramRun.Of("mend", file, "--stores", ExampleFiles.Stores, "--width", Figures.Degrees(width, 0));
            Assert.All(run.Lines, line => Assert.True(CellText.Width(line) <= width, $"{CellText.Width(line)} columns, {width} asked for: {line}"));
        }
    }

    [Fact]
    public void Without_its_colours_a_coloured_page_is_the_plain_one()
    {
        string[] args = ["mend", ExampleFiles.Shed, "--stores", ExampleFiles.Stores];
        string plain = ProgramRun.Of(args).Output;
        string coloured = ProgramRun.Of(args, new(Colours: Colours.Many)).Output;

        Assert.DoesNotContain('\e', plain);
        Assert.Contains('\e', coloured);
        Assert.Equal(plain, Escapes.StripFrom(coloured));
    }

    [Fact]
    public void A_boat_that_must_not_go_out_says_so_whatever_is_planned_for_it()
    {
        string output = ProgramRun.Of("mend", ExampleFiles.Shed, "--boat", "Nuthatch", "--stores", ExampleFiles.Stores).Output;

        Assert.Contains("[STOP]   Mark the boat on its rack", output, StringComparison.Ordinal);
        Assert.Contains("until\nthen its verdict stands", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_parts_are_known_to_help_it_says_what_to_read()
    {
        // By the race standard two boats of the shed want more than an insert and one tilt.
        string[] lines = ProgramRun.Of("mend", ExampleFiles.Shed, "--standard", "race", "--plain").Lines;
        int stuck = Array.FindIndex(lines, line => line.EndsWith("No parts are known to bring it inside: read on first.", StringComparison.Ordinal));

        Assert.InRange(stuck, 0, lines.Length);
        Assert.Contains(lines.Skip(stuck).TakeWhile(line => line.Length > 0), line => line.StartsWith("Next: Read ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_that_is_not_proven_says_what_is_not_ruled_out()
    {
        var plan = new ShedPlan([], [], [new(AimNames.AboveFloors, 3, 3), new(AimNames.Inside, 2, 3)], [new(AimNames.Bought, 5, 4)]);

        Assert.Equal(
            "The search ended at its limit, so a better plan may exist: boats inside their standard 2, 3 not ruled out; parts bought 5, 4 not ruled out.",
            PlanWords.Proof(plan));
    }

    [Fact]
    public void What_makes_up_for_a_cause_says_that_it_does_not_set_it_right()
    {
        string words = ProgramRun.Of("mend", ExampleFiles.Shed, "--boat", "Dipper").Output.ReplaceLineEndings(" ").Replace("          ", string.Empty, StringComparison.Ordinal);

        Assert.Contains("Fit an insert that gives 2°.", words, StringComparison.Ordinal);
        Assert.Contains("Most likely it is a pin leaning fore or aft: this makes up for it in what gauge and blade show, and does not set it right.", words, StringComparison.Ordinal);
    }
}
