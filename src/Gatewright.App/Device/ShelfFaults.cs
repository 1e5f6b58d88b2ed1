using Gatewright.App.Frame;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;
using Microsoft.JSInterop;

namespace Gatewright.App.Device;

/// <summary>What is said, in the reader's language, when this device could not keep or read something.</summary>
public static class ShelfFaults
{
    /// <summary>The fault that a message of the script tells of: its name stands first, in brackets.</summary>
    public static ShelfException Of(JSException broken, Texts<DeviceTexts> texts)
    {
        ArgumentNullException.ThrowIfNull(broken);
        ShelfFault fault = broken.Message switch
        {
            var m when m.Contains("[QuotaExceededError]", StringComparison.Ordinal) => ShelfFault.Full,
            var m when m.Contains("[VersionError]", StringComparison.Ordinal) => ShelfFault.Closed,
            _ => ShelfFault.Damaged,
        };
        return new(fault, Told(fault, texts), broken);
    }

    /// <summary>What is said of an exception that recording or reading threw.</summary>
    public static string Told(Exception broken, Texts<DeviceTexts> texts)
    {
        ArgumentNullException.ThrowIfNull(broken);
        ArgumentNullException.ThrowIfNull(texts);
        return broken switch
        {
            ShelfException shelf => Told(shelf.Fault, texts),
            PhotoException => texts["PhotoBroken"],
            NotAllowedException refused => texts[refused.HasLeft ? "HasLeft" : "NotAllowed"],
            NotRecordedException refused => texts["NotRecorded", refused.Message],
            _ => broken.Message,
        };
    }

    /// <summary>What is said of a fault.</summary>
    public static string Told(ShelfFault fault, Texts<DeviceTexts> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        return texts[fault switch
        {
            ShelfFault.Full => "Full",
            ShelfFault.Closed => "Closed",
            _ => "Damaged",
        }];
    }
}
