using Gatewright.Core.Diagnosing;

namespace Gatewright.App.Keeping.Settings;

/// <summary>What a club's own jobs have taught of one cause.</summary>
/// <param name="Cause">The cause, as the name of its text.</param>
/// <param name="Found">How often it was found.</param>
/// <param name="In">What it was looked for in, as the name of a text: gates, oars, boats or gauges.</param>
/// <param name="Checked">How often that was looked at.</param>
/// <param name="Start">Its chance before anything was learnt.</param>
/// <param name="Now">Its chance with what was learnt.</param>
public sealed record ChanceRow(string Cause, int Found, string In, int Checked, double Start, double Now)
{
    /// <summary>The causes that jobs teach.</summary>
    internal static IReadOnlyList<ChanceRow> Of(FoundCauses found, PriorChances start, PriorChances now) =>
    [
        new(nameof(found.GatePitch), found.GatePitch, "gates", found.GatesChecked, start.GatePitch, now.GatePitch),
        new(nameof(found.PinAft), found.PinAft, "gates", found.GatesChecked, start.PinAft, now.PinAft),
        new(nameof(found.PinOut), found.PinOut, "gates", found.GatesChecked, start.PinOut, now.PinOut),
        new(nameof(found.Rigger), found.Rigger, "gates", found.GatesChecked, start.Rigger, now.Rigger),
        new(nameof(found.Sleeve), found.Sleeve, "oars", found.OarsChecked, start.Sleeve, now.Sleeve),
        new(nameof(found.HullLevel), found.HullLevel, "boats", found.BoatsChecked, start.HullLevel, now.HullLevel),
        new(nameof(found.GaugeZero), found.GaugeZero, "gauges", found.GaugesChecked, start.GaugeZero, now.GaugeZero),
    ];
}
