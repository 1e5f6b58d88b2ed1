namespace Gatewright.App.Rig;

/// <summary>Texts of the pages of the rig.</summary>
public sealed class RigTexts;
