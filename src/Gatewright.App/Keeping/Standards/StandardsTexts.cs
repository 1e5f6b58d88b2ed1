namespace Gatewright.App.Keeping.Standards;

/// <summary>Names the texts of the standards.</summary>
public sealed class StandardsTexts;
