using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Frame;

/// <summary>A piece of the screen in which a touch may take away what has the focus.</summary>
public abstract class FocusingPart : ComponentBase
{
    private string[]? _focus;

    /// <summary>Puts the focus where it belongs.</summary>
    [Inject]
    public required FocusNext Focus { get; set; }

    /// <summary>Says where the focus goes when this is drawn next: what has it now will be gone.</summary>
    /// <param name="places">Selectors; the first that is there is taken.</param>
    protected void FocusThen(params string[] places) => _focus = places;

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_focus is { } places)
        {
            _focus = null;
            await Focus.GoAsync(places);
        }
    }
}
