using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>Where readings come from, and what is said when they cannot.</summary>
public sealed class InputTests
{
    [Fact]
    public void A_pipe_is_read_like_a_file()
    {
        string input = File.ReadAllText(ExampleFiles.Small);
        string expected = ProgramRun.Of("check", ExampleFiles.Small).Output;
        Assert.Equal(expected, ProgramRun.Of(["check"], new(Input: input)).Output);
        Assert.Equal(expected, ProgramRun.Of(["check", "-"], new(Input: input)).Output);
    }

    [Fact]
    public void Several_files_are_one_shed()
    {
        string[] lines = File.ReadAllLines(ExampleFiles.Small);
        using var first = new TemporaryFile(lines[..10]);
        using var second = new TemporaryFile([lines[0], .. lines[10..]]);
        Assert.Equal(
            ProgramRun.Of("check", ExampleFiles.Small, "--json").Output,
            ProgramRun.Of("check", first.Path, second.Path, "--json").Output);
    }

    [Fact]
    public void A_file_and_a_pipe_are_one_shed()
    {
        ProgramRun run = ProgramRun.Of(["check", ExampleFiles.Small, "-"], new(Input: Readings.Single("Wren")));
        Assert.Contains("The shed: 5 boats", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_at_all_is_wrong_input()
    {
        ProgramRun run = ProgramRun.Of("check");
        Assert.Equal(2, run.Status);
        Assert.Equal(string.Empty, run.Output);
        Expectation.Matches("no-input", run.Error);
    }

    [Fact]
    public void Everything_wrong_is_told_at_once_and_nothing_is_judged()
    {
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Wrong, "Data/missing.csv", "--standard", "clup");
        Assert.Equal(2, run.Status);
        Assert.Equal(string.Empty, run.Output);
        Expectation.Matches("wrong-input", run.Error);
    }

    [Fact]
    public void A_folder_is_no_file()
    {
        ProgramRun run = ProgramRun.Of("check", "Data");
        Assert.Equal(2, run.Status);
        Assert.Contains("Data: is a folder, not a file.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_standard_s_file_that_is_wrong_is_told_of()
    {
        using var standard = new TemporaryFile(["{ \"format\": \"gatewright.standard/1\", \"name\": \"odd\", \"extends\": \"club\", \"catch\": { \"floor\": \"two\" } }"]);
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Small, "--standard", standard.Path);
        Assert.Equal(2, run.Status);
        Assert.Contains("$.catch.floor", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void One_boat_can_be_asked_for_in_any_case()
    {
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Small, "--boat", "HERON");
        Assert.Equal(0, run.Status);
        Assert.Contains("The shed: 1 boat, 4 gates read", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_boats_can_be_asked_for()
    {
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Small, "--boat", "Tern", "--boat", "Heron");
        Assert.Contains("The shed: 2 boats", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boat_that_is_not_there_is_wrong_input()
    {
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Small, "--boat", "Hero");
        Assert.Equal(2, run.Status);
        Assert.Equal(
            "--boat: 'Hero' is none of the boats that were read: Heron, Osprey, Merlin, Tern.\n1 error. Nothing was judged.\n",
            run.Error);
    }

    [Fact]
    public void Warnings_are_part_of_the_answer()
    {
        // A lone decimal comma is understood; the same file may mean something else to another program.
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Shed);
        Assert.Contains("warning", run.Output, StringComparison.Ordinal);
        Assert.Equal(string.Empty, run.Error);
    }
}
