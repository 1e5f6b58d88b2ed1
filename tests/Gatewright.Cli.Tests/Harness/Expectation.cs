using System.Runtime.CompilerServices;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>
/// Compares output with a file: of a plain name in Expectations/, else where the name says. With
/// GATEWRIGHT_WRITE_EXPECTATIONS=1 in the environment the files are written instead: read the difference before it
/// is committed.
/// </summary>
internal static class Expectation
{
    private const string WriteVariable = "GATEWRIGHT_WRITE_EXPECTATIONS";

    public static void Matches(string name, string actual)
    {
        bool isPlain = !name.Contains('/', StringComparison.Ordinal);
        string path = isPlain ? $"Expectations/{name}.txt" : name;
        if (Environment.GetEnvironmentVariable(WriteVariable) == "1")
        {
            string root = isPlain ? ".." : "../../..";
            File.WriteAllText(Path.Combine(SourceFolder(), root, path), actual);
            return;
        }

        string expected = File.Exists(path) ? File.ReadAllText(path) : string.Empty;
        string? difference = LineDifference.Between(expected, actual);
        if (difference is not null)
        {
            Assert.Fail($"The output is not as {path} has it (- expected, + actual):\n{difference}\n"
                + $"If it should be: {WriteVariable}=1, run the tests, read git diff.");
        }
    }

    private static string SourceFolder([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
