using Gatewright.App.Frame;
using Gatewright.Core.Changing;
using Gatewright.Core.Checking;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Changing;

/// <summary>A page about a boat's whole rig: the name first, the rig once it is worked out.</summary>
public abstract class RigPage : RecordingPage
{
    /// <summary>Time for a screen to be painted before something heavy begins.</summary>
    private static readonly TimeSpan Frame = TimeSpan.FromMilliseconds(20);

    private int _reading;

    /// <summary>The boat's key.</summary>
    [Parameter]
    public required string Key { get; set; }

    /// <summary>The boat; null until it is read, and where there is none.</summary>
    protected BoatView? View { get; private set; }

    /// <summary>Its rig; null until it is worked out, and while its class is not known.</summary>
    protected RigOfBoat? Rig { get; private set; }

    /// <summary>Whether it was looked for.</summary>
    protected bool IsLookedFor { get; private set; }

    /// <inheritdoc/>
    protected override async Task ReadAsync()
    {
        int mine = ++_reading;
        BoatStanding? standing = await InHand.BoatAsync(Key);
        if (mine != _reading)
        {
            return;
        }

        View = standing?.View;
        StateHasChanged();
        await Task.Delay(Frame);
        if (mine != _reading)
        {
            return;
        }

        Rig = standing is null ? null : OnRecord(standing, null, standing.View.Name);
        await RigReadAsync();
        IsLookedFor = true;
        if (mine == _reading)
        {
            StateHasChanged();
        }
    }

    /// <summary>What follows once the rig is worked out.</summary>
    protected virtual Task RigReadAsync() => Task.CompletedTask;

    /// <summary>A boat's rig on a day, or today for null.</summary>
    /// <param name="key">The boat.</param>
    /// <param name="day">The day.</param>
    protected async Task<RigOfBoat?> RigAsync(string key, DateOnly? day) => await InHand.BoatAsync(key) is { } standing
        ? OnRecord(standing, day, day is { } on ? $"{standing.View.Name}, {Said.Day(on)}" : standing.View.Name)
        : null;

    private RigOfBoat? OnRecord(BoatStanding standing, DateOnly? day, string name) =>
        RigOnRecord.On(InHand.Club, standing.View.Key, day, standing.Check?.Settings ?? CheckSettings.Default, name);
}
