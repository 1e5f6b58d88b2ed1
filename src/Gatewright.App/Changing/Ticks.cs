using Gatewright.App.Device;

namespace Gatewright.App.Changing;

/// <summary>What was ticked off on a list: kept on this device, so that it is there again when the page is.</summary>
/// <param name="device">The device.</param>
/// <param name="list">The list's name.</param>
internal sealed class Ticks(ThisDevice device, string list)
{
    private const string Before = "ticks ";
    private readonly HashSet<string> _ticked =
        [.. (device.IsOpen ? device.Device.Settings.GetValueOrDefault(Before + list) ?? string.Empty : string.Empty).Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>These ticks where they are of a list, else that list's.</summary>
    public static Ticks Of(Ticks? before, ThisDevice device, string list) => before?.List == list ? before : new(device, list);

    private string List { get; } = list;

    /// <summary>Whether something is ticked.</summary>
    public bool Has(string item) => _ticked.Contains(item);

    /// <summary>Ticks it, or takes the tick away.</summary>
    public Task TurnAsync(string item)
    {
        if (!_ticked.Remove(item))
        {
            _ticked.Add(item);
        }

        return KeepAsync();
    }

    /// <summary>Takes all ticks away.</summary>
    public Task ClearAsync()
    {
        _ticked.Clear();
        return KeepAsync();
    }

    private Task KeepAsync() => device.IsOpen
        ? device.Device.SetAsync(Before + List, _ticked.Count == 0 ? null : string.Join('\n', _ticked))
        : Task.CompletedTask;
}
