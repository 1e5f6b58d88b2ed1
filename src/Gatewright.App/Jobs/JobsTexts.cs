namespace Gatewright.App.Jobs;

/// <summary>Names the texts of mending.</summary>
public sealed class JobsTexts;
