namespace Gatewright.App.Device;

/// <summary>Words for what this device could not do: its texts lie in the resource files beside it.</summary>
public sealed class DeviceTexts;
