namespace Gatewright.App.SharingPages;

/// <summary>Names the texts of what is shared and what is not.</summary>
public sealed class SharingPagesTexts;
