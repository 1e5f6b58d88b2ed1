using Gatewright.Cli.Terminals;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests;

/// <summary>The README's picture is the program's own output.</summary>
public sealed class PictureTests
{
    [Fact]
    public void The_picture_shows_what_the_program_writes()
    {
        ProgramRun run = ProgramRun.Of(
            ["check", ExampleFiles.Shed, "--boat", "Hornbeam", "--boat", "Bittern", "--boat", "Sandpiper", "--boat", "Nuthatch"],
            new(Colours: Colours.Many));
        string untilLegend = run.Output[..run.Output.IndexOf("Judged by", StringComparison.Ordinal)];
        Expectation.Matches("docs/pictures/check.svg", Picture.Of("Part of what gatewright check writes", untilLegend));
    }
}
