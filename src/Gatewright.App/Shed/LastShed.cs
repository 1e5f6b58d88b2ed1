using Gatewright.App.Device;
using Microsoft.JSInterop;

namespace Gatewright.App.Shed;

/// <summary>The shed as it was last seen, kept so that it is there at once when the program is opened again.</summary>
/// <remarks>Whatever changes in the club makes it old, and then it shows no verdicts: a boat that is held since never looks as one that is not.</remarks>
public sealed class LastShed
{
    private readonly IJSInProcessRuntime _script;

    /// <summary>Follows the club in hand.</summary>
    public LastShed(IJSRuntime script, ClubInHand inHand)
    {
        ArgumentNullException.ThrowIfNull(inHand);
        _script = (IJSInProcessRuntime)script;

        // Whoever taps readings in waits for this: a call that nobody waits for costs less than one that tells when it is done.
        inHand.Recorded += () => _script.InvokeVoid("gatewright.outdateShed");
    }

    /// <summary>Keeps what the screen shows.</summary>
    public async Task KeepAsync()
    {
        // One turn later: what was just decided is drawn then.
        await Task.Yield();
        await _script.InvokeVoidAsync("gatewright.keepShed");
    }
}
