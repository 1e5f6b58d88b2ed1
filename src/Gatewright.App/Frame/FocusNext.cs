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
        IJSObjectReference module = await (_module ??= script.InvokeAsync<IJSObjectReference>("import", "./focus.js").AsTask());
        await module.InvokeVoidAsync("focus", new object[] { places.ToArray() });
    }
}
