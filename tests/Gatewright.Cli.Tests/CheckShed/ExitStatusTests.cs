using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

public sealed class ExitStatusTests
{
    [Theory]
    [InlineData("Heron", 0)]
    [InlineData("Tern", 1)]
    [InlineData("Osprey", 1)]
    [InlineData("Merlin", 1)]
    public void Only_a_shed_that_is_all_good_ends_with_0(string boat, int status)
    {
        foreach (string form in (string[])["--all", "--plain", "--json"])
        {
            Assert.Equal(status, ProgramRun.Of("check", ExampleFiles.Small, "--boat", boat, form).Status);
        }
    }

    [Theory]
    [InlineData("check", "--widht", "90")]
    [InlineData("check", "Data/shed.csv", "--width", "20")]
    [InlineData("check", "Data/shed.csv", "--plain", "--json")]
    [InlineData("chekc")]
    [InlineData("pitch", "--gate", "steep")]
    [InlineData("pitch", "--gate", "90")]
    [InlineData("pitch", "--side", "left")]
    [InlineData("pitch", "--gate", "NaN")]
    public void A_command_line_that_makes_no_sense_ends_with_2_and_says_so_on_the_standard_error(params string[] args)
    {
        ProgramRun run = ProgramRun.Of(args);
        Assert.Equal(2, run.Status);
        Assert.Equal(string.Empty, run.Output);
        Assert.NotEqual(string.Empty, run.Error);
    }

    [Fact]
    public void No_command_is_no_answer()
    {
        ProgramRun run = ProgramRun.Of();
        Assert.Equal(2, run.Status);
        Assert.Equal(string.Empty, run.Output);
        Assert.Contains("gatewright check", run.Error, StringComparison.Ordinal);
    }
}
