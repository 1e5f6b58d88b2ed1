using System.Text.Json;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Mend;

/// <summary>What examples/README.md says of the plan for the examples' shed.</summary>
public sealed class MendExampleTests
{
    [Theory]
    [InlineData("mended", "mended today")]
    [InlineData("left", "wait for parts")]
    [InlineData("read-again", "read again")]
    public void The_page_has_the_boats_that_come_out_so(string outcome, string words)
    {
        using JsonDocument plan = JsonDocument.Parse(
            ProgramRun.Of("mend", ExampleFiles.Shed, "--stores", ExampleFiles.Stores, "--json").Output);
        IEnumerable<string?> boats = plan.RootElement.GetProperty("boats").EnumerateArray()
            .Where(b => b.GetProperty("outcome").GetString() == outcome)
            .Select(b => b.GetProperty("boat").GetString());

        Assert.Contains($"| {words} | {string.Join(", ", boats)} |", File.ReadAllText("examples/README.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_has_the_shopping_list()
    {
        string output = ProgramRun.Of("mend", ExampleFiles.Shed, "--stores", ExampleFiles.Stores, "--plain").Output;
        string list = output.Split('\n').Single(line => line.StartsWith("To buy: ", StringComparison.Ordinal));
        string readable = list["To buy: ".Length..].TrimEnd('.').Replace(" degrees", "°", StringComparison.Ordinal);

        Assert.Contains($"| to buy | {readable} |", File.ReadAllText("examples/README.md"), StringComparison.Ordinal);
    }
}
