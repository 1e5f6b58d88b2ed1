using System.CommandLine;
using Gatewright.Cli.Terminals;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Terminals;

public sealed class HelpTests
{
    [Theory]
    [InlineData("help")]
    [InlineData("help-check", "check")]
    [InlineData("help-mend", "mend")]
    [InlineData("help-rig", "rig")]
    [InlineData("help-oars", "oars")]
    [InlineData("help-targets", "targets")]
    [InlineData("help-change", "change")]
    [InlineData("help-change-keep", "change", "keep")]
    [InlineData("help-change-list", "change", "list")]
    [InlineData("help-change-show", "change", "show")]
    [InlineData("help-change-done", "change", "done")]
    [InlineData("help-change-drop", "change", "drop")]
    [InlineData("help-compare", "compare")]
    [InlineData("help-travel", "travel")]
    [InlineData("help-pitch", "pitch")]
    [InlineData("help-gearing", "gearing")]
    [InlineData("help-balance", "balance")]
    [InlineData("help-chances", "chances")]
    [InlineData("help-chances-learn", "chances", "learn")]
    [InlineData("help-chances-reset", "chances", "reset")]
    [InlineData("help-simulate", "simulate")]
    [InlineData("help-record", "record")]
    [InlineData("help-print", "print")]
    [InlineData("help-print-sheet", "print", "sheet")]
    [InlineData("help-print-job", "print", "job")]
    [InlineData("help-print-round", "print", "round")]
    [InlineData("help-print-labels", "print", "labels")]
    [InlineData("help-club", "club")]
    [InlineData("help-club-list", "club", "list")]
    [InlineData("help-club-changes", "club", "changes")]
    [InlineData("help-club-day", "club", "day")]
    [InlineData("help-club-export", "club", "export")]
    [InlineData("help-club-import", "club", "import")]
    [InlineData("help-club-verify", "club", "verify")]
    [InlineData("help-club-backup", "club", "backup")]
    [InlineData("help-club-restore", "club", "restore")]
    [InlineData("help-serve", "serve")]
    public void Help_is_as_expected_and_has_examples(string expectation, params string[] command)
    {
        ProgramRun run = ProgramRun.Of([.. command, "--help"]);
        Assert.Equal(0, run.Status);
        Assert.Contains("Examples:\n  gatewright ", run.Output, StringComparison.Ordinal);
        Expectation.Matches(expectation, run.Output);
    }

    [Fact]
    public void Every_example_parses()
    {
        RootCommand root = Program.Commands(new(Stream.Null, false, TextWriter.Null, TextWriter.Null, Colours.None, null));
        foreach (Example example in root.Subcommands.SelectMany(c => c.Subcommands.Prepend(c)).Append(root).SelectMany(Examples.Of))
        {
            // A shell takes what follows > and < for itself.
            string line = example.Line["gatewright ".Length..].Split(['>', '<'])[0];
            Assert.Empty(root.Parse(line).Errors);
        }
    }

    [Fact]
    public void Every_command_has_examples_of_its_own()
    {
        RootCommand root = Program.Commands(new(Stream.Null, false, TextWriter.Null, TextWriter.Null, Colours.None, null));
        Assert.All(root.Subcommands, command => Assert.All(
            Examples.Of(command), example => Assert.StartsWith($"gatewright {command.Name}", example.Line, StringComparison.Ordinal)));
    }

    [Fact]
    public void Help_keeps_to_80_columns()
    {
        foreach (string[] args in (string[][])[["--help"], ["check", "--help"], ["mend", "--help"], ["pitch", "--help"], ["simulate", "--help"], ["chances", "--help"], ["chances", "learn", "--help"], ["record", "--help"], ["club", "--help"], ["club", "export", "--help"], ["club", "import", "--help"]])
        {
            Assert.All(ProgramRun.Of(args).Lines, line => Assert.True(line.Length <= 80, line));
        }
    }

    [Fact]
    public void A_slip_of_the_finger_gets_a_suggestion() =>
        Assert.Equal(
            "Unrecognized option '--explian'. Did you mean --explain?\n\nTry: gatewright check --help\n",
            ProgramRun.Of("check", "--explian", "round.csv").Error);

    [Fact]
    public void A_command_that_there_is_not_gets_a_suggestion() =>
        Assert.Contains("check", ProgramRun.Of("chekc").Error, StringComparison.Ordinal);

    [Fact]
    public void The_version_is_told() =>
        Assert.Matches(@"^\d+\.\d+\.\d+\n$", ProgramRun.Of("--version").Output);
}
