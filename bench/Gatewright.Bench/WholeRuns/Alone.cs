using System.Diagnostics;
using System.Globalization;

namespace Gatewright.Bench.WholeRuns;

/// <summary>
/// Work done in a process of its own, so that its memory and its start are its own: this program, started again with
/// <see cref="Switch"/> and the name of a class that implements <see cref="IAlone"/>.
/// </summary>
internal static class Alone
{
    public const string Switch = "--alone";

    /// <summary>Starts a process that does the work of <typeparamref name="T"/>, and waits for it.</summary>
    /// <exception cref="InvalidOperationException">It failed.</exception>
    public static AloneRun Start<T>(string argument)
        where T : IAlone
    {
        long start = Stopwatch.GetTimestamp();
        (int status, string said) = Processes.Run(
            Environment.CurrentDirectory, "dotnet", typeof(T).Assembly.Location, Switch, typeof(T).Name, argument);
        double seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
        return status == 0
            ? new(seconds, long.Parse(said, CultureInfo.InvariantCulture))
            : throw new InvalidOperationException($"{typeof(T).Name} ended with status {status}: {said}");
    }

    /// <summary>The other end: does the work, and says how much memory that took.</summary>
    public static void Do(string name, string argument)
    {
        Type type = typeof(IAlone).Assembly.GetTypes().Single(type => type.Name == name && typeof(IAlone).IsAssignableFrom(type));
        ((IAlone)Activator.CreateInstance(type)!).Do(argument);
        using var self = Process.GetCurrentProcess();
        Console.WriteLine(self.PeakWorkingSet64.ToString(CultureInfo.InvariantCulture));
    }
}
