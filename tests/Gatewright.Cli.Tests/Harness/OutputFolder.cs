using System.Runtime.CompilerServices;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>Files are named in messages as they were asked for, so all tests run in the folder that has them.</summary>
internal static class OutputFolder
{
    // An assembly's initialiser is the one place that comes before every test, in whichever order they run.
#pragma warning disable CA2255
    [ModuleInitializer]
    internal static void Enter() => Environment.CurrentDirectory = AppContext.BaseDirectory;
#pragma warning restore CA2255
}
