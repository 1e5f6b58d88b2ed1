namespace Gatewright.App.Keeping.Settings;

/// <summary>Names the texts of the settings.</summary>
public sealed class SettingsTexts;
