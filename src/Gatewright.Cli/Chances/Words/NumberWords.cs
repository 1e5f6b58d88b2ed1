using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Learning;

namespace Gatewright.Cli.Chances.Words;

/// <summary>A number of the table, and where it comes from, in words.</summary>
internal static class NumberWords
{
    /// <summary>"0.0163", "2", "400": four decimals at most.</summary>
    public static string Figure(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>Where it comes from.</summary>
    public static NumberSource Source(ChanceNumber number, ClubChances table) =>
        Counted(number, table.Jobs.Found) is { IsChecked: > 0 } ? NumberSource.Learnt
        : number.Get(table).Equals(number.Default) ? NumberSource.Default
        : NumberSource.Set;

    /// <summary>"default", "set in the file", "6 found in 200 gates checked, from 0.015".</summary>
    public static string From(ChanceNumber number, ClubChances table)
    {
        string start = number.Get(table).Equals(number.Default) ? "the default" : "the file's";
        return Source(number, table) switch
        {
            NumberSource.Default => "default",
            NumberSource.Set => $"set in the file; the default is {Figure(number.Default)}",
            _ when Counted(number, table.Jobs.Found) is { Found: { } found } counted =>
                string.Create(CultureInfo.InvariantCulture, $"{found} found in {Figures.Count(counted.IsChecked, counted.Thing)}, from {start} {Figure(number.Get(table))}"),
            _ => $"{start} {Figure(number.Get(table))} and {Figures.Count(Counted(number, table.Jobs.Found).IsChecked, "check")}",
        };
    }

    /// <summary>How many things of its kind were checked, and in how many the cause was found; of a weight only the first.</summary>
    public static (int IsChecked, int? Found, string Thing) Counted(ChanceNumber number, FoundCauses found) => number.Key switch
    {
        "chances.gatePitch" => (found.GatesChecked, found.GatePitch, "gate"),
        "chances.pinAft" => (found.GatesChecked, found.PinAft, "gate"),
        "chances.pinOut" => (found.GatesChecked, found.PinOut, "gate"),
        "chances.rigger" => (found.GatesChecked, found.Rigger, "gate"),
        "chances.sleeve" => (found.OarsChecked, found.Sleeve, "oar"),
        "chances.hullLevel" => (found.BoatsChecked, found.HullLevel, "level"),
        "chances.gaugeZero" => (found.GaugesChecked, found.GaugeZero, "gauge"),
        "weights.gates" => (found.GatesChecked, null, "gate"),
        "weights.oars" => (found.OarsChecked, null, "oar"),
        "weights.boats" => (found.BoatsChecked, null, "level"),
        "weights.gauges" => (found.GaugesChecked, null, "gauge"),
        _ => (0, null, string.Empty),
    };
}

/// <summary>Where a number comes from.</summary>
internal enum NumberSource
{
    /// <summary>Nobody changed it.</summary>
    Default,

    /// <summary>Somebody set it in the file.</summary>
    Set,

    /// <summary>Finished jobs were counted.</summary>
    Learnt,
}
