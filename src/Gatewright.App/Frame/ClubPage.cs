using Gatewright.App.Device;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Frame;

/// <summary>A page about the club in hand: it is drawn anew when the club changes, and leads elsewhere while none is open.</summary>
public abstract class ClubPage : FocusingPart, IDisposable
{
    private bool _isDrawn;

    /// <summary>The club.</summary>
    [Inject]
    public required ClubInHand InHand { get; set; }

    /// <summary>Where one is.</summary>
    [Inject]
    public required NavigationManager Navigation { get; set; }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        _isDrawn = true;
        await base.OnAfterRenderAsync(firstRender);
    }

    /// <summary>
    /// Which reading of the club is the newest: one that finds another here stops. None goes on once the page is left, since
    /// whoever has gone on to a round must not wait for sixty boats that nobody looks at.
    /// </summary>
    protected int Reading { get; set; }

    /// <summary>Whether what was read when the club changed is other than what is shown: else the page stays as it is drawn.</summary>
    protected virtual bool IsOther => true;

    /// <summary>Reads anew what the page shows of the club: when it opens, when where it is changes, and when the club does.</summary>
    protected virtual Task ReadAsync() => Task.CompletedTask;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        InHand.Changed += Changed;
        InHand.StandsOtherwise += StandsOtherwise;
    }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => InHand.IsOpen ? ReadAsync() : Task.CompletedTask;

    /// <inheritdoc/>
    public void Dispose()
    {
        InHand.Changed -= Changed;
        InHand.StandsOtherwise -= StandsOtherwise;
        Reading++;
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Lets go of what the page holds beside.</summary>
    protected virtual void Dispose(bool disposing)
    {
    }

    /// <summary>Has the page follow what changed, while a club is open. What fails then is told as it is when the page opens.</summary>
    /// <param name="follow">What the page does.</param>
    protected async Task FollowAsync(Func<Task> follow)
    {
        try
        {
            await InvokeAsync(() => InHand.IsOpen ? follow() : Task.CompletedTask);
        }
        catch (Exception broken) when (InHand.IsOpen)
        {
            // A club that was put down under the page is nobody's fault.
            await DispatchExceptionAsync(broken);
        }
    }

    // What is not drawn yet is drawn as the member now stands.
    private void StandsOtherwise()
    {
        if (_isDrawn)
        {
            Changed();
        }
    }

    private void Changed() => _ = FollowAsync(async () =>
    {
        await ReadAsync();
        if (IsOther)
        {
            StateHasChanged();
        }
    });
}
