using Gatewright.App.Frame;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Device;

/// <summary>Why what this device keeps could not be opened.</summary>
/// <param name="Message">What happened, and what to do about it.</param>
/// <param name="Detail">What whoever keeps the program running needs to know, in the program's own words; null where the message says it all.</param>
public sealed record OpeningFault(string Message, string? Detail)
{
    /// <summary>What is told of an exception.</summary>
    public static OpeningFault Of(Exception broken, Texts<DeviceTexts> texts)
    {
        ArgumentNullException.ThrowIfNull(broken);
        ArgumentNullException.ThrowIfNull(texts);
        return broken is ShelfException
            ? new(ShelfFaults.Told(broken, texts), null)
            : new(texts["Unforeseen"], $"{broken.GetType().Name}: {broken.Message}");
    }
}
