using Microsoft.JSInterop;

namespace Gatewright.App.Shed;

/// <summary>The shed as it was last seen, kept so that it is there at once when the program is opened again.</summary>
public sealed class LastShed(IJSRuntime script)
{
    /// <summary>Keeps what the screen shows.</summary>
    public async Task KeepAsync()
    {
        // One turn later: what was just decided is drawn then.
        await Task.Yield();
        await script.InvokeVoidAsync("gatewright.keepShed");
    }
}
