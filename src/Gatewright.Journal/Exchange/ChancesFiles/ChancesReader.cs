using System.Globalization;
using System.Text.Json;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.ChancesFiles;

/// <summary>Reads a table of chances from its JSON, with every problem on the way.</summary>
internal sealed class ChancesReader(JsonReporter report)
{
    private const string Root = "$";
    private const string Jobs = "jobs";

    private readonly Dictionary<string, JsonElement> _numbers = new(StringComparer.Ordinal);

    /// <summary>The table; null when the root is no object, and not to be used when there are errors.</summary>
    public ClubChances? Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            report.Error(Root, root, "is not a table of chances: expected an object, { \"format\": ... }.");
            return null;
        }

        report.CheckKeys(Root, root, ["format", .. KeysUnder(""), Jobs]);
        CheckFormat(root);
        Gather(root, "");
        ClubChances table = ChanceNumbers.All.Aggregate(ClubChances.Default, Take);
        CheckTogether(table);
        return root.TryGetProperty(Jobs, out JsonElement jobs)
            ? table with { Jobs = new ChancesJobs(report).Read($"{Root}.{Jobs}", jobs) }
            : table;
    }

    private void CheckFormat(JsonElement root)
    {
        string expected = $"expected \"{ChancesFile.Format}\".";
        if (!root.TryGetProperty("format", out JsonElement format))
        {
            report.Missing($"{Root}.format", $"missing: {expected}");
        }
        else if (format.ValueKind != JsonValueKind.String || !format.ValueEquals(ChancesFile.Format))
        {
            report.Error($"{Root}.format", format, $"is not the format that is read here: {expected}");
        }
    }

    /// <summary>The keys that may stand in the object of that path: "" for the whole, "reports." for the reports.</summary>
    private static string[] KeysUnder(string path) =>
    [
        .. ChanceNumbers.All
            .Where(number => number.Key.StartsWith(path, StringComparison.Ordinal))
            .Select(number => number.Key[path.Length..].Split('.')[0])
            .Distinct(),
    ];

    /// <summary>Gathers the numbers that the file gives, by their keys, and looks over the objects they stand in.</summary>
    private void Gather(JsonElement parent, string path)
    {
        foreach (string key in KeysUnder(path))
        {
            if (!parent.TryGetProperty(key, out JsonElement element))
            {
                continue;
            }

            string[] inside = KeysUnder($"{path}{key}.");
            if (inside.Length == 0)
            {
                _numbers[path + key] = element;
            }
            else if (element.ValueKind != JsonValueKind.Object)
            {
                report.Error($"{Root}.{path}{key}", element, $"is not a set of numbers: expected {{ {string.Join(", ", inside.Select(k => $"\"{k}\""))} }}.");
            }
            else
            {
                report.CheckKeys($"{Root}.{path}{key}", element, inside);
                Gather(element, $"{path}{key}.");
            }
        }
    }

    /// <summary>The table with what the file says of a number, if it says anything.</summary>
    private ClubChances Take(ClubChances table, ChanceNumber number)
    {
        if (!_numbers.TryGetValue(number.Key, out JsonElement element))
        {
            return table;
        }

        string path = $"{Root}.{number.Key}";
        if (element.ValueKind != JsonValueKind.Number)
        {
            string hint = element.ValueKind == JsonValueKind.String ? ", without quote marks and with a decimal point" : "";
            report.Error(path, element, $"is not a number: expected {number.Range}{hint}.");
            return table;
        }

        if (!element.TryGetDouble(out double value) || !number.Range.Takes(value))
        {
            report.Error(path, element, $"is out of range: expected {number.Range}.");
            return table;
        }

        return number.With(table, value);
    }

    private void CheckTogether(ClubChances table)
    {
        PriorChances chances = table.Before;
        double gate = chances.GatePitch + chances.PinAft + chances.PinOut + chances.Rigger;
        if (gate >= 1)
        {
            report.Missing($"{Root}.chances", string.Create(
                CultureInfo.InvariantCulture,
                $"gatePitch, pinAft, pinOut and rigger come to {gate:0.####} together, a cause at every gate: expected less than 1."));
        }

        foreach (ChanceNumber peak in ChanceNumbers.Reports.Where(number => number.Key.EndsWith(".peak", StringComparison.Ordinal)))
        {
            ChanceNumber bottom = ChanceNumbers.Reports.Single(number => number.Key == peak.Key.Replace(".peak", ".base", StringComparison.Ordinal));
            if (peak.Get(table) < bottom.Get(table))
            {
                report.Missing($"{Root}.{peak.Key}", string.Create(
                    CultureInfo.InvariantCulture,
                    $"{peak.Get(table)} is below base ({bottom.Get(table)}): a report is told more often in trouble than out of it, so expected peak to be at least base."));
            }
        }
    }
}
