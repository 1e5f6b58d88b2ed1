using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Boat;

/// <summary>A part of a boat's page that records: what cannot be recorded is said, and what was typed stays.</summary>
public abstract class BoatForm : ComponentBase
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

    /// <summary>Why it was not recorded; null while nothing was wrong.</summary>
    protected string? Wrong { get; set; }

    /// <summary>Whether something is being recorded now.</summary>
    protected bool IsBusy { get; private set; }

    /// <summary>Whether the member here may record a fact, and it is not the past that is shown.</summary>
    protected bool May(Fact fact) => !Seen.IsPast && InHand.May(fact);

    /// <summary>Records; a second tap while it does is the same once more, and is not recorded.</summary>
    /// <returns>Whether it is on this device's disk.</returns>
    protected async Task<bool> TryAsync(params Fact[] facts)
    {
        if (IsBusy)
        {
            return false;
        }

        (Wrong, IsBusy) = (null, true);
        try
        {
            await InHand.RecordAsync(facts);
            return true;
        }
        catch (NotRecordedException refused)
        {
            Wrong = ShelfFaults.Told(refused, Faults);
        }
        catch (ShelfException broken)
        {
            Wrong = ShelfFaults.Told(broken, Faults);
        }
        finally
        {
            IsBusy = false;
        }

        return false;
    }
}
