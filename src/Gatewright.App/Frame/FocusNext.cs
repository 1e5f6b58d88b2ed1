using Microsoft.JSInterop;

namespace Gatewright.App.Frame;

/// <summary>Where the focus goes once a page is drawn anew, when what had it is gone.</summary>
public sealed class FocusNext(IJSRuntime script)
{
    private Task<IJSObjectReference>? _module;

    /// <summary>Puts it on the first of some places that is there.</summary>
    /// <param name="places">Selectors, the best place first.</param>
    public async Task GoAsync(IReadOnlyList<string> places)
    {
        if (await ModuleAsync() is { } module)
        {
            await module.InvokeVoidAsync("focus", new object[] { places.ToArray() });
        }
    }

    /// <summary>The script; null where it does not come, without a network say: the page goes on without it, and it is asked for again next time.</summary>
    private async Task<IJSObjectReference?> ModuleAsync()
    {
        try
        {
            return await (_module ??= script.InvokeAsync<IJSObjectReference>("import", "./focus.js").AsTask());
        }
        catch (JSException)
        {
            _module = null;
            return null;
        }
    }
}
