namespace Gatewright.App.Frame;

/// <summary>Names the texts around every page.</summary>
public sealed class FrameTexts;
