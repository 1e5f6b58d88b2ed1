using Gatewright.App.Device;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Frame;

/// <summary>A page that puts things on record, and says so when it cannot.</summary>
public abstract class RecordingPage : ClubPage
{
    private bool _isRecording;

    /// <summary>Words for what this device could not do.</summary>
    [Inject]
    public required Texts<DeviceTexts> Faults { get; set; }

    /// <summary>Why the last thing was not recorded; null when it was.</summary>
    protected string? Fault { get; private set; }

    /// <summary>
    /// Records facts, all or none. What was typed stays where it is when they are not. A second tap while the first is being
    /// recorded is the same once more, and is not recorded.
    /// </summary>
    /// <returns>Whether they are on this device's disk.</returns>
    protected async Task<bool> TryRecordAsync(params Fact[] facts) => await RecordedAsync(facts) is not null;

    /// <summary>The same, for whoever needs the ids.</summary>
    /// <returns>The ids of their entries once they are on this device's disk; null where they are not.</returns>
    protected async Task<IReadOnlyList<Guid>?> RecordedAsync(params Fact[] facts)
    {
        if (_isRecording)
        {
            return null;
        }

        (Fault, _isRecording) = (null, true);
        try
        {
            return await InHand.RecordAsync(facts);
        }
        catch (Exception refused) when (refused is NotRecordedException or ShelfException)
        {
            Fault = ShelfFaults.Told(refused, Faults);
            return null;
        }
        finally
        {
            _isRecording = false;
        }
    }
}
