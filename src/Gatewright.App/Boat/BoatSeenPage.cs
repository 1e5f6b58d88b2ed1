using System.Globalization;
using Gatewright.App.Frame;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Standing;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Boat;

/// <summary>
/// A page about one boat. It shows what is known at once and works out the rest step by step, each step painted before
/// the next begins: the record, the verdict, then why.
/// </summary>
public abstract class BoatSeenPage : ClubPage
{
    /// <summary>Time for a screen to be painted before something heavy begins.</summary>
    private static readonly TimeSpan Frame = TimeSpan.FromMilliseconds(20);

    private int _reading;

    /// <summary>The boat's key.</summary>
    [Parameter]
    public required string Key { get; set; }

    /// <summary>The day in the past, as 2026-10-01; none for today.</summary>
    [SupplyParameterFromQuery(Name = "day")]
    public string? OnDay { get; set; }

    /// <summary>What day it is.</summary>
    [Inject]
    public required TimeProvider Clock { get; set; }

    /// <summary>The boat; null until it is read, and where there is none.</summary>
    protected BoatSeen? Seen { get; private set; }

    /// <summary>Whether it was looked for.</summary>
    protected bool IsLookedFor { get; private set; }

    /// <summary>What is probably wrong; null until that is worked out.</summary>
    protected Diagnosis? Diagnosis { get; private set; }

    /// <summary>Today, here.</summary>
    protected DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    /// <summary>The day in the past that is asked for; null for today and for what is no such day.</summary>
    protected DateOnly? PastDay =>
        DateOnly.TryParseExact(OnDay, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) && day < Today
            ? day
            : null;

    /// <inheritdoc/>
    protected override async Task ReadAsync()
    {
        int mine = ++_reading;
        BoatSeen? seen = PastDay is { } day ? await ThenAsync(day) : await NowAsync();
        if (mine != _reading)
        {
            return;
        }

        BoatCheck? before = Seen?.Check;
        (Seen, IsLookedFor) = (seen, true);
        if (seen?.Check is not { } check)
        {
            Diagnosis = null;
            StateHasChanged();
            return;
        }

        if (Diagnosis is null || !ReferenceEquals(check, before))
        {
            Diagnosis = null;
            await PaintedAsync();
            if (mine != _reading)
            {
                return;
            }

            Diagnosis = check.Diagnosis;
        }

        await PaintedAsync();
        if (mine == _reading)
        {
            await DiagnosedAsync(check);
        }
    }

    /// <summary>
    /// What comes after the diagnosis has been painted; once more for each reading of the boat, since one that came in
    /// between may have stopped the one before.
    /// </summary>
    protected virtual Task DiagnosedAsync(BoatCheck check) => Task.CompletedTask;

    private async Task<BoatSeen?> NowAsync() => await InHand.BoatAsync(Key) is { } standing
        ? new(InHand.Club, standing, null, [])
        : null;

    private async Task<BoatSeen?> ThenAsync(DateOnly day)
    {
        await PaintedAsync();
        CheckSettings settings = (await InHand.BoatAsync(Key))?.Check?.Settings ?? CheckSettings.Default;
        var then = BoatOnDay.Of(InHand.Club, Key, day, Today, settings);
        return then.Standing is { } standing ? new(then.Club, standing, day, then.Since) : null;
    }

    private async Task PaintedAsync()
    {
        StateHasChanged();
        await Task.Delay(Frame);
    }
}
