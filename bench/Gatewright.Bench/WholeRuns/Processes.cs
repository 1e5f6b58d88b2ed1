using System.Diagnostics;

namespace Gatewright.Bench.WholeRuns;

internal static class Processes
{
    /// <summary>Runs a program to its end, and hands back its status and what it printed.</summary>
    public static (int Status, string Said) Run(string folder, string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        using Process process = Process.Start(start)!;
        process.StandardInput.Close();
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said);
    }
}
