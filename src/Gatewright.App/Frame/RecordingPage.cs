using Gatewright.Journal.Facts;

namespace Gatewright.App.Frame;

/// <summary>A page that puts things on record, and says so when it cannot.</summary>
public abstract class RecordingPage : DeedPage
{
    /// <summary>
    /// Records facts, all or none. What was typed stays where it is when they are not. A second tap while the first is being
    /// recorded is the same once more, and is not recorded.
    /// </summary>
    /// <returns>Whether they are on this device's disk.</returns>
    protected Task<bool> TryRecordAsync(params Fact[] facts) => Deed.TryAsync(() => InHand.RecordAsync(facts));

    /// <summary>The same, for whoever needs the ids.</summary>
    /// <returns>The ids of their entries once they are on this device's disk; null where they are not.</returns>
    protected async Task<IReadOnlyList<Guid>?> RecordedAsync(params Fact[] facts)
    {
        IReadOnlyList<Guid>? entries = null;
        await Deed.TryAsync(async () => entries = await InHand.RecordAsync(facts));
        return entries;
    }
}
