using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Keeping;

/// <summary>A page on which something of the club is kept: it records, says that it has, and when it could not, leaves all that was typed as it is.</summary>
public abstract class KeepingPage : ClubPage
{
    /// <summary>Words that these pages have in common.</summary>
    [Inject]
    public required Texts<KeepingTexts> K { get; set; }

    /// <summary>Words for what this device could not do.</summary>
    [Inject]
    public required Texts<DeviceTexts> Faults { get; set; }

    /// <summary>Why something was not recorded; null where nothing is in the way.</summary>
    protected string? Fault { get; private set; }

    /// <summary>What was just done; null before.</summary>
    protected string? Done { get; private set; }

    /// <summary>Whether something is being done now: what is handed in meanwhile would be done twice.</summary>
    protected bool IsBusy { get; private set; }

    /// <summary>Does something that ends on this device's disk.</summary>
    /// <param name="act">What.</param>
    /// <param name="done">What is said of it then; by itself that it is kept.</param>
    /// <param name="eachCounts">Whether two taps, one soon after the other, mean two: of anything else the second is the same once more.</param>
    /// <returns>Whether it was done.</returns>
    protected async Task<bool> TryAsync(Func<Task> act, string? done = null, bool eachCounts = false)
    {
        ArgumentNullException.ThrowIfNull(act);
        if (IsBusy && !eachCounts)
        {
            return false;
        }

        (Fault, Done, IsBusy) = (null, null, true);
        try
        {
            await act();
            Done = done ?? K["Kept"];
            return true;
        }
        catch (NotRecordedException wrong)
        {
            Fault = ShelfFaults.Told(wrong, Faults);
        }
        catch (ShelfException broken)
        {
            Fault = ShelfFaults.Told(broken, Faults);
        }
        finally
        {
            IsBusy = false;
        }

        return false;
    }

    /// <summary>How often something was handed in: each time what became of it is brought into sight.</summary>
    protected int Tries { get; private set; }

    /// <summary>Something is handed in: what was said before no longer matters.</summary>
    protected void HandIn()
    {
        if (!IsBusy)
        {
            (Fault, Done, Tries) = (null, null, Tries + 1);
        }
    }
}
