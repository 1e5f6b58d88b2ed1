using System.Globalization;
using System.Text.Json;
using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Journal.Exchange;

/// <summary>Reads the numbers of a standard, and whether they go together.</summary>
/// <param name="report">Where problems go.</param>
/// <param name="basis">Where values come from that the file does not give; null when there is none.</param>
/// <param name="isComplete">Whether the file has to give all of them.</param>
internal sealed class StandardDegrees(JsonReporter report, Standard? basis, bool isComplete)
{
    /// <summary>Degrees either way: beyond, no limit limits anything.</summary>
    private const double Most = 30;

    private static readonly string[] s_keys = ["lowest", "highest", "floor"];

    /// <summary>The limits at a station; whatever has an error in it is 0.</summary>
    public StationLimits Limits(JsonElement root, Station station)
    {
        string path = $"$.{station.Word()}";
        StationLimits? based = basis?.At(station);
        if (!root.TryGetProperty(station.Word(), out JsonElement limits))
        {
            if (isComplete)
            {
                report.Missing(path, $"missing: expected {{ \"lowest\", \"highest\", \"floor\" }} in degrees. {Extend}");
            }

            return based ?? StationLimits.FromDegrees(0, 0, 0);
        }

        if (limits.ValueKind != JsonValueKind.Object)
        {
            report.Error(path, limits, "is not a set of limits: expected { \"lowest\", \"highest\", \"floor\" } in degrees.");
            return StationLimits.FromDegrees(0, 0, 0);
        }

        report.CheckKeys(path, limits, s_keys);
        int before = report.Errors.Count;
        double lowest = Of(limits, path, "lowest", based?.Lowest.Degrees, -Most);
        double highest = Of(limits, path, "highest", based?.Highest.Degrees, -Most);
        double floor = Of(limits, path, "floor", based?.Floor.Degrees, -Most);
        bool isWhole = isComplete || basis is not null;
        if (isWhole && report.Errors.Count == before)
        {
            CheckOrder(limits, path, "lowest", lowest, "highest", highest);
            CheckOrder(limits, path, "floor", floor, "lowest", lowest);
            CheckFloor(limits, path, floor, Standard.Club.At(station).Floor.Degrees);
        }

        return StationLimits.FromDegrees(lowest, highest, floor);
    }

    /// <summary>A number of degrees, from some least to 30; 0 when it has reported an error.</summary>
    public double Of(JsonElement parent, string path, string key, double? based, double least)
    {
        string at = $"{path}.{key}";
        string expected = string.Create(CultureInfo.InvariantCulture, $"expected degrees, a number from {least} to {Most}");
        if (!parent.TryGetProperty(key, out JsonElement element))
        {
            if (isComplete)
            {
                report.Missing(at, $"missing: {expected}. {Extend}");
            }

            return based ?? 0;
        }

        if (element.ValueKind != JsonValueKind.Number)
        {
            string hint = element.ValueKind == JsonValueKind.String ? ", without quote marks and with a decimal point" : "";
            report.Error(at, element, $"is not a number: {expected}{hint}.");
            return 0;
        }

        if (!element.TryGetDouble(out double degrees) || !(degrees >= least && degrees <= Most))
        {
            report.Error(at, element, $"is out of range: {expected}.");
            return 0;
        }

        return degrees;
    }

    private static string Extend => $"Or state \"extends\": \"{Standard.Club.Name}\" to take from there what is not given.";

    private void CheckOrder(JsonElement limits, string path, string lowerKey, double lower, string upperKey, double upper)
    {
        if (lower <= upper)
        {
            return;
        }

        string key = limits.TryGetProperty(lowerKey, out JsonElement element) ? lowerKey : upperKey;
        element = key == lowerKey ? element : limits.GetProperty(upperKey);
        string message = key == lowerKey
            ? $"is above {upperKey} ({Shown(limits, upperKey, upper)}): expected {lowerKey} to be at most {upperKey}."
            : $"is below {lowerKey} ({Shown(limits, lowerKey, lower)}): expected {lowerKey} to be at most {upperKey}.";
        report.Error($"{path}.{key}", element, message);
    }

    /// <summary>The value, and where it comes from when it is not the file.</summary>
    private string Shown(JsonElement limits, string key, double degrees) => string.Create(
        CultureInfo.InvariantCulture, $"{degrees}{(limits.TryGetProperty(key, out _) ? "" : $" of {basis?.Name}")}");

    private void CheckFloor(JsonElement limits, string path, double floor, double builtIn)
    {
        if (floor < builtIn && limits.TryGetProperty("floor", out JsonElement element))
        {
            report.Warn($"{path}.floor", element, string.Create(
                CultureInfo.InvariantCulture,
                $"is below the built-in floor of {builtIn}: it takes away from the margin that keeps a blade from diving. Agree it with whoever answers for safety in the club."));
        }
    }
}
