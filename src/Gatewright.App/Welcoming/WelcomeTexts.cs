namespace Gatewright.App.Welcoming;

/// <summary>Names the texts of the first screen.</summary>
public sealed class WelcomeTexts;
