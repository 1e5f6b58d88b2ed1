using System.Text;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Mend;

public sealed class MendPlainTests
{
    [Fact]
    public void A_plan_for_a_small_shed_is_told_as_expected() => Expectation.Matches(
        "mend-plain", ProgramRun.Of("mend", ExampleFiles.Small, "--stores", "Data/stores.csv", "--plain").Output);

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void Every_line_is_a_statement_in_words(string file)
    {
        foreach (string line in ProgramRun.Of("mend", file, "--stores", ExampleFiles.Stores, "--plain").Lines.Where(line => line.Length > 0))
        {
            Assert.True(Ascii.IsValid(line), $"not plain: {line}");
            Assert.True((char.IsUpper(line[0]) || char.IsAsciiDigit(line[0])) && line[^1] is '.' or ':', $"not a statement: {line}");
        }
    }
}
