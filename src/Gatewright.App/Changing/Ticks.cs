using Gatewright.App.Device;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Changing;

/// <summary>What was ticked off on a list about a club: kept on this device, so that it is there again when the page is.</summary>
/// <param name="device">The device.</param>
/// <param name="club">The club's id.</param>
/// <param name="list">The list's name.</param>
internal sealed class Ticks(ThisDevice device, string club, string list)
{
    private HashSet<string> _ticked =
        [.. (device.IsOpen ? device.Device.Of(club, Setting(list)) ?? string.Empty : string.Empty).Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    private Task _last = Task.CompletedTask;

    /// <summary>These ticks where they are of a list, else that list's.</summary>
    public static Ticks Of(Ticks? before, ThisDevice device, string club, string list) =>
        before is not null && before.List == (club, list) ? before : new(device, club, list);

    private (string Club, string Name) List { get; } = (club, list);

    /// <summary>Whether something is ticked.</summary>
    public bool Has(string item) => _ticked.Contains(item);

    /// <summary>Ticks it, or takes the tick away.</summary>
    /// <exception cref="ShelfException">It is as it was.</exception>
    public Task TurnAsync(string item) => KeepAsync(ticked => ticked.Contains(item) ? [.. ticked.Where(t => t != item)] : [.. ticked, item]);

    /// <summary>Takes all ticks away.</summary>
    /// <exception cref="ShelfException">They are as they were.</exception>
    public Task ClearAsync() => KeepAsync(_ => []);

    private static string Setting(string list) => $"ticks {list}";

    /// <summary>One after the other: a second tap comes before the disk has answered the first.</summary>
    private Task KeepAsync(Func<HashSet<string>, HashSet<string>> turned) => _last = KeepAfterAsync(_last, turned);

    private async Task KeepAfterAsync(Task before, Func<HashSet<string>, HashSet<string>> turned)
    {
        await before.ConfigureAwait(ConfigureAwaitOptions.ContinueOnCapturedContext | ConfigureAwaitOptions.SuppressThrowing);
        HashSet<string> next = turned(_ticked);
        if (device.IsOpen)
        {
            await device.Device.SetAsync(List.Club, Setting(List.Name), next.Count == 0 ? null : string.Join('\n', next));
        }

        _ticked = next;
    }
}
