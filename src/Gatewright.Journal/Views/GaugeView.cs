using System.Globalization;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A gauge of the club.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Gauge">What its readings' uncertainty rests on.</param>
/// <param name="Checks">Its reversal checks, oldest first; the last gives its zero.</param>
public sealed record GaugeView(string Key, Gauge Gauge, IReadOnlyList<Recorded> Checks)
{
    /// <summary>A gauge by its key; what was not set of it is as the settings have it.</summary>
    public static GaugeView Of(Club club, string key, MeasuringSettings settings) => Of(club, key, settings, new(club, Things.Gauge));

    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<GaugeView> All(Club club, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(club);
        var titles = new ThingTitles(club, Things.Gauge);
        return [.. club.Subjects.Where(s => s.Thing == Things.Gauge)
            .Select(s => Of(club, s.Key, settings, titles))
            .OrderBy(g => g.Gauge.Name, StringComparer.OrdinalIgnoreCase).ThenBy(g => g.Key, StringComparer.Ordinal)];
    }

    /// <summary>A gauge by its key, named so that its name tells it from the others.</summary>
    internal static GaugeView Of(Club club, string key, MeasuringSettings settings, ThingTitles titles)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var thing = new ThingView(club, Things.Gauge, key);
        List<Recorded> checks = [.. club.About(new(Things.Gauge, key)).Where(r => r.Fact is GaugeReversed)];
        GaugeZero zero = checks is [.., { Fact: GaugeReversed last }]
            ? GaugeZero.FromReversal(Angle.FromDegrees((double)last.First), Angle.FromDegrees((double)last.Turned), settings.CheckedGaugeZeroU)
            : GaugeZero.Assumed(settings.GaugeZeroU);
        return new(
            key,
            new(titles[key], Degrees(thing["resolution"]) ?? settings.GaugeResolution, Degrees(thing["repeatability"]) ?? settings.GaugeRepeatability, zero),
            checks);
    }

    private static Angle? Degrees(string? value) =>
        decimal.TryParse(value, CultureInfo.InvariantCulture, out decimal degrees) ? Angle.FromDegrees((double)degrees) : null;
}
