using Gatewright.App.Device;
using Microsoft.JSInterop;

namespace Gatewright.App.Shed;

/// <summary>The shed as it was last seen, kept so that it is there at once when the program is opened again.</summary>
/// <remarks>Whatever changes in the club makes it old, and then it shows no verdicts: a boat that is held since never looks as one that is not.</remarks>
public sealed class LastShed
{
    private readonly IJSRuntime _script;

    /// <summary>Follows the club in hand.</summary>
    public LastShed(IJSRuntime script, ClubInHand inHand)
    {
        ArgumentNullException.ThrowIfNull(inHand);
        _script = script;
        inHand.Recorded += () => _ = _script.InvokeVoidAsync("gatewright.outdateShed").AsTask();
    }

    /// <summary>Keeps what the screen shows.</summary>
    public async Task KeepAsync()
    {
        // One turn later: what was just decided is drawn then.
        await Task.Yield();
        await _script.InvokeVoidAsync("gatewright.keepShed");
    }
}
