using System.Text;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

public sealed class PlainTests
{
    [Fact]
    public void A_small_shed_is_told_as_expected() =>
        Expectation.Matches("small-shed-plain", ProgramRun.Of("check", ExampleFiles.Small, "--plain", "--explain").Output);

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void Every_sign_is_a_word(string file)
    {
        string output = ProgramRun.Of("check", file, "--plain", "--all", "--explain").Output;
        foreach (string line in output.Split('\n'))
        {
            Assert.True(Ascii.IsValid(line), $"not plain: {line}");
        }
    }

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void Every_line_is_a_statement_of_its_own(string file)
    {
        foreach (string line in ProgramRun.Of("check", file, "--plain").Lines.Where(line => line.Length > 0))
        {
            Assert.True(char.IsUpper(line[0]) && line[^1] is '.' or ':', $"not a statement: {line}");
        }
    }

    [Fact]
    public void It_gives_the_verdict_of_every_boat_first()
    {
        string[] lines = ProgramRun.Of("check", ExampleFiles.Small, "--plain").Lines;
        Assert.Contains("Boat Heron, class 2x: good.", lines);
        Assert.Contains("Boat Osprey, class 4-: adjust.", lines);
        Assert.Contains("Boat Merlin, class 1x: stop.", lines);
        Assert.Contains("Boat Tern, class 2-: unsure.", lines);
    }

    [Fact]
    public void The_width_does_not_break_its_lines() =>
        Assert.Equal(
            ProgramRun.Of("check", ExampleFiles.Small, "--plain").Output,
            ProgramRun.Of("check", ExampleFiles.Small, "--plain", "--width", "40").Output);
}
