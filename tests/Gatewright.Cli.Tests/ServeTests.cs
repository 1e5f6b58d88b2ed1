using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests;

/// <summary>The server is another program; this one says so.</summary>
public sealed class ServeTests
{
    [Theory]
    [InlineData("serve")]
    [InlineData("serve", "--demo", "--listen", "http://127.0.0.1:1")]
    public void Run_from_here_it_says_how_to_start_it(params string[] args)
    {
        ProgramRun run = ProgramRun.Of(args);
        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.Contains("./gatewright serve starts it", run.Error, StringComparison.Ordinal);
    }
}
