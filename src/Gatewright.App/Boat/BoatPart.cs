using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.Journal.Facts;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Boat;

/// <summary>A part of a boat's page that records: what cannot be recorded is said, and what was typed stays.</summary>
public abstract class BoatPart : FocusingPart
{
    /// <summary>The club.</summary>
    [Inject]
    public required ClubInHand InHand { get; set; }

    /// <summary>Words for what this device could not do.</summary>
    [Inject]
    public required Texts<DeviceTexts> Faults { get; set; }

    /// <summary>The boat.</summary>
    [Parameter, EditorRequired]
    public required BoatSeen Seen { get; set; }

    /// <summary>What is missing, or why it was not recorded; null while nothing was wrong.</summary>
    protected string? Wrong
    {
        get => field ?? Deed.Fault;
        set
        {
            field = value;
            Deed.Forget();
        }
    }

    private Deed Deed => field ??= new(Faults);

    /// <summary>Whether the member here may record facts of a kind, and it is not the past that is shown.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <param name="thing">The kind of thing it is of, where properties are set or a note is made.</param>
    protected bool May<T>(string? thing = null)
        where T : Fact => !Seen.IsPast && InHand.May<T>(thing);

    /// <summary>
    /// Records; a second tap while it does is the same once more, and is not recorded. No button is locked meanwhile: one that
    /// is lets go of the focus.
    /// </summary>
    /// <returns>Whether it is on this device's disk.</returns>
    protected Task<bool> TryAsync(params Fact[] facts) => TryAsync(() => InHand.RecordAsync(facts));

    /// <summary>Does something that ends on this device's disk.</summary>
    /// <returns>Whether it was done.</returns>
    protected Task<bool> TryAsync(Func<Task> act)
    {
        Wrong = null;
        return Deed.TryAsync(act);
    }
}
