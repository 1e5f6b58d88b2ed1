using System.Diagnostics;
using System.Text;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests;

/// <summary>A few runs of the program as what it is: a process with pipes and an environment.</summary>
public sealed class ProcessTests
{
    [Fact]
    public async Task A_check_writes_what_it_writes_in_process()
    {
        ProgramRun run = await Start(null, null, "check", ExampleFiles.Small);
        Assert.Equal(new ProgramRun(1, ProgramRun.Of("check", ExampleFiles.Small).Output, string.Empty), run);
    }

    [Fact]
    public async Task A_pipe_is_read()
    {
        ProgramRun run = await Start(Readings.Single("漕艇"), null, "check", "--plain");
        Assert.Equal(0, run.Status);
        Assert.StartsWith("Boat 漕艇, class 1x: good.\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_input_ends_with_2_and_writes_on_the_standard_error_alone()
    {
        ProgramRun run = await Start(null, null, "check", ExampleFiles.Wrong);
        Assert.Equal(2, run.Status);
        Assert.Equal(string.Empty, run.Output);
        Assert.EndsWith("4 errors. Nothing was judged.\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pipe_gets_no_escape_whatever_the_terminal_is_called()
    {
        ProgramRun run = await Start(null, null, "check", ExampleFiles.Small);
        Assert.DoesNotContain('\e', run.Output);
    }

    [Fact]
    public async Task The_environment_may_name_the_database_and_the_command_line_comes_before_it()
    {
        ProgramRun named = await Start(null, "nonsense", "club", "list");
        Assert.Equal(74, named.Status);
        Assert.Contains("The connection to PostgreSQL cannot be read", named.Error, StringComparison.Ordinal);
        ProgramRun folder = await Start(null, "nonsense", "club", "list", "--data", "no-such-folder");
        Assert.Contains("There is no store in", folder.Error, StringComparison.Ordinal);
        Assert.Equal(1, (await Start(null, "nonsense", "check", ExampleFiles.Small)).Status);
    }

    private static async Task<ProgramRun> Start(string? input, string? database, params string[] args)
    {
        string dotnet = Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path) == "dotnet" ? path : "dotnet";
        var start = new ProcessStartInfo(dotnet, ["gatewright.dll", .. args])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(false),
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.Environment["TERM"] = "xterm-256color";
        start.Environment["GATEWRIGHT_DATABASE"] = database;
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.StandardInput.WriteAsync(input);
        process.StandardInput.Close();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new(process.ExitCode, await output, await error);
    }
}
