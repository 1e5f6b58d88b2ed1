namespace Gatewright.App.Changing;

/// <summary>Names the texts of the pages about whole rigs.</summary>
public sealed class ChangingTexts;
