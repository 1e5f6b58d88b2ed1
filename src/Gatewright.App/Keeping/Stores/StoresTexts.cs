namespace Gatewright.App.Keeping.Stores;

/// <summary>Names the texts of the stores.</summary>
public sealed class StoresTexts;
