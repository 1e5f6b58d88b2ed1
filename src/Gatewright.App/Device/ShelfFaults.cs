using Gatewright.Replica.Shelves;
using Microsoft.JSInterop;

namespace Gatewright.App.Device;

/// <summary>What the browser's database says when it cannot.</summary>
public static class ShelfFaults
{
    /// <summary>The fault that a message of the script tells of: its name stands first, in brackets.</summary>
    public static ShelfException Of(JSException broken)
    {
        ArgumentNullException.ThrowIfNull(broken);
        return broken.Message switch
        {
            var m when m.Contains("[QuotaExceededError]", StringComparison.Ordinal) =>
                new(ShelfFault.Full, "This device gives no more room: nothing of this was kept.", broken),
            var m when m.Contains("[InvalidStateError]", StringComparison.Ordinal) =>
                new(ShelfFault.Closed, "A newer program is open in another page: close this one.", broken),
            var m => new(ShelfFault.Damaged, $"What this device keeps cannot be reached: {m.Split('\n')[0]}", broken),
        };
    }
}
