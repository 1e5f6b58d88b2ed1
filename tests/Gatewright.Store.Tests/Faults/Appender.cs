using System.Globalization;
using Gatewright.Store.Faults;
using Gatewright.Store.Opening;

namespace Gatewright.Store.Tests.Faults;

/// <summary>
/// A program that appends entries of <see cref="Made"/> one batch after another, and says of each batch, once it is
/// acknowledged, which entry was its last: "ack 12". A fault is said as "fault Full", and the same batch tried again.
/// </summary>
internal static class Appender
{
    public const string Switch = "--append";

    /// <summary>Entries a batch: more than one, so that half a batch would show.</summary>
    public const int Batch = 3;

    public static async Task<int> RunAsync(string engine, string connection, string first)
    {
        var location = new StoreLocation(Enum.Parse<Engine>(engine), connection);
        await ToldAsync(async () => await StoreOpening.OpenAsync(location));
        var journal = new JournalStore(location);
        for (int next = int.Parse(first, CultureInfo.InvariantCulture); ; next += Batch)
        {
            await ToldAsync(async () => await journal.AppendAsync("club", Made.Entries(next, Batch)));
            await SayAsync(string.Create(CultureInfo.InvariantCulture, $"ack {next + Batch - 1}"));
        }
    }

    private static async Task ToldAsync(Func<Task> call)
    {
        while (true)
        {
            try
            {
                await call();
                return;
            }
            catch (StoreException said)
            {
                await SayAsync($"fault {said.Fault}");
                await Task.Delay(100);
            }
        }
    }

    private static async Task SayAsync(string line)
    {
        await Console.Out.WriteLineAsync(line);
        await Console.Out.FlushAsync();
    }
}
