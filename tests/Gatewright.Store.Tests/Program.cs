using Gatewright.Store.Tests.Faults;

namespace Gatewright.Store.Tests;

/// <summary>The tests; or, asked so by one of them, a program that appends until it is killed.</summary>
internal static class Program
{
    public static Task<int> Main(string[] args) => args switch
    {
        [Appender.Switch, var engine, var connection, var first] => Appender.RunAsync(engine, connection, first),
        _ when args.Any(arg => arg is "--server" or "--internal-msbuild-node") =>
            Xunit.MicrosoftTestingPlatform.TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions),
        _ => Xunit.Runner.InProc.SystemConsole.ConsoleRunner.Run(args),
    };
}
