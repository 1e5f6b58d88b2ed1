namespace Gatewright.App.Reporting;

/// <summary>Names the texts of reports.</summary>
public sealed class ReportTexts;
