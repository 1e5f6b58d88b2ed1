using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Mend;

/// <summary>Where readings and stores come from, and what is said when they cannot.</summary>
public sealed class MendInputTests
{
    [Fact]
    public void Everything_wrong_with_readings_and_stores_is_told_at_once_and_nothing_is_planned()
    {
        ProgramRun run = ProgramRun.Of("mend", ExampleFiles.Wrong, "--stores", "Data/wrong-stores.csv", "--standard", "clup");
        Assert.Equal(2, run.Status);
        Assert.Equal(string.Empty, run.Output);
        Expectation.Matches("mend-wrong-input", run.Error);
    }

    [Fact]
    public void A_file_of_stores_that_is_not_there_is_told_of()
    {
        ProgramRun run = ProgramRun.Of("mend", ExampleFiles.Small, "--stores", "Data/missing.csv");
        Assert.Equal(2, run.Status);
        Assert.Contains("Data/missing.csv: there is no such file.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boat_with_backstays_that_was_not_read_is_told_of()
    {
        ProgramRun run = ProgramRun.Of("mend", ExampleFiles.Small, "--backstay", "Wigeon");
        Assert.Equal(2, run.Status);
        Assert.Contains("--backstay: 'Wigeon' is none of the boats that were read: Heron, Osprey, Merlin, Tern.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_backstay_needs_no_part()
    {
        ProgramRun without = ProgramRun.Of("mend", ExampleFiles.Shed, "--boat", "Rowan");
        ProgramRun with = ProgramRun.Of("mend", ExampleFiles.Shed, "--boat", "Rowan", "--backstay", "rowan");

        Assert.Contains("It waits for parts.", without.Output, StringComparison.Ordinal);
        Assert.Contains("Set the backstay", with.Output, StringComparison.Ordinal);
        Assert.Contains("Inside its standard with what is on the shelf", with.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_odd_about_the_stores_is_a_warning()
    {
        using var stores = new TemporaryFile(["part,size,count", "shim,1,2", "shim,1,3"]);
        ProgramRun run = ProgramRun.Of("mend", ExampleFiles.Small, "--stores", stores.Path, "--plain");
        Assert.Equal(1, run.Status);
        Assert.Contains("line 3, column part: 'shim 1 mm' stands in line 2 too: they are counted together.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Stores_as_a_spreadsheet_saves_them_are_read()
    {
        using var stores = new TemporaryFile(["PART;Size;Count", "insert;4;1", "shim;1,0;1", "washer;2 mm;2"]);
        Assert.Equal(
            ProgramRun.Of("mend", ExampleFiles.Small, "--stores", "Data/stores.csv").Output,
            ProgramRun.Of("mend", ExampleFiles.Small, "--stores", stores.Path).Output);
    }

    [Theory]
    [InlineData("Heron", 0)]
    [InlineData("Osprey", 1)]
    public void Only_a_shed_that_is_all_good_ends_with_0(string boat, int status) =>
        Assert.Equal(status, ProgramRun.Of("mend", ExampleFiles.Small, "--boat", boat).Status);
}
