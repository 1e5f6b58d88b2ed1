using Gatewright.Journal.Facts;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Frame;

/// <summary>A page that puts things on record, and says so when it cannot.</summary>
public abstract class RecordingPage : ClubPage
{
    /// <summary>Why the last thing was not recorded; null when it was.</summary>
    protected string? Fault { get; private set; }

    /// <summary>Records facts, all or none. What was typed stays where it is when they are not.</summary>
    /// <returns>Whether they are on this device's disk.</returns>
    protected async Task<bool> TryRecordAsync(params Fact[] facts)
    {
        Fault = null;
        try
        {
            await InHand.RecordAsync(facts);
            return true;
        }
        catch (Exception refused) when (refused is NotRecordedException or ShelfException)
        {
            Fault = refused.Message;
            return false;
        }
    }
}
