using Gatewright.App.Device;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Frame;

/// <summary>A page on which something is done that ends on this device's disk.</summary>
public abstract class DeedPage : ClubPage
{
    /// <summary>Words for what this device could not do.</summary>
    [Inject]
    public required Texts<DeviceTexts> Faults { get; set; }

    /// <summary>What is done here.</summary>
    protected Deed Deed => field ??= new(Faults);

    /// <summary>Why the last was not done; null where nothing is in the way.</summary>
    protected string? Fault => Deed.Fault;
}
