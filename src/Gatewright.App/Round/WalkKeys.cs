using Microsoft.JSInterop;

namespace Gatewright.App.Round;

/// <summary>What a walk along a boat hears of the keyboard, wherever on the page the focus is.</summary>
/// <param name="moved">So many places on, or back where it is below 0.</param>
/// <param name="undone">The last is taken back.</param>
/// <param name="escaped">What stands open is closed.</param>
/// <param name="changed">After each of these: the page is drawn anew.</param>
public sealed class WalkKeys(Action<int> moved, Func<Task> undone, Action escaped, Action changed) : IAsyncDisposable
{
    private DotNetObjectReference<WalkKeys>? _here;
    private IJSObjectReference? _module;
    private bool _isGone;

    /// <summary>Begins to listen.</summary>
    /// <returns>Whether it does: not where the page was left while the script came, and nobody is there to listen for.</returns>
    public async Task<bool> ListenAsync(IJSRuntime script)
    {
        _here = DotNetObjectReference.Create(this);
        IJSObjectReference module = await script.InvokeAsync<IJSObjectReference>("import", "./round.js");
        if (_isGone)
        {
            await module.DisposeAsync();
            return false;
        }

        _module = module;
        await _module.InvokeVoidAsync("listen", _here);
        return true;
    }

    /// <summary>Lets go of the keyboard.</summary>
    public async ValueTask DisposeAsync()
    {
        _isGone = true;
        if (_module is not null)
        {
            await _module.InvokeVoidAsync("stop");
            await _module.DisposeAsync();
        }

        _here?.Dispose();
    }

    /// <summary>The keys that go on or back were pressed.</summary>
    [JSInvokable]
    public void Moved(int steps)
    {
        moved(steps);
        changed();
    }

    /// <summary>The keys that take back were pressed.</summary>
    [JSInvokable]
    public async Task Undone()
    {
        await undone();
        changed();
    }

    /// <summary>The key that closes was pressed.</summary>
    [JSInvokable]
    public void Escaped()
    {
        escaped();
        changed();
    }
}
