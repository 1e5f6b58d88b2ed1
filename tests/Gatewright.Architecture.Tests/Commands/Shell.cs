using System.Diagnostics;

namespace Gatewright.Architecture.Tests.Commands;

/// <summary>Runs a command as a person would, and hands back what it said.</summary>
internal static class Shell
{
    public static (int Status, string Output) Run(string folder, string input, string command, params string[] arguments)
    {
        var start = new ProcessStartInfo(command, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        using Process process = Process.Start(start)!;
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }
}
