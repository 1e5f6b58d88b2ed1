using System.Globalization;
using System.Text.Json;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;

namespace Gatewright.Journal.Exchange;

/// <summary>Reads a standard from its JSON, with every problem on the way.</summary>
internal sealed class StandardReader(JsonReporter report)
{
    private const string Root = "$";

    private static readonly string[] s_keys =
        ["format", "name", "extends", .. Stations.All.Select(s => s.Word()), "largestDrop", "largestRange"];

    private static readonly string s_builtIn = string.Join(" or ", Standard.BuiltIn.Select(s => s.Name));

    /// <summary>The standard; null when the root is no object, and not to be used when there are errors.</summary>
    public Standard? Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            report.Error(Root, root, "is not a standard: expected an object, { \"format\": ... }.");
            return null;
        }

        report.CheckKeys(Root, root, s_keys);
        CheckFormat(root);
        string name = Name(root);
        Standard? basis = Basis(root, out bool isComplete);
        var degrees = new StandardDegrees(report, basis, isComplete);
        StationLimits[] limits = [.. Stations.All.Select(s => degrees.Limits(root, s))];
        double drop = degrees.Of(root, Root, "largestDrop", basis?.LargestDrop.Degrees, 0);
        double range = degrees.Of(root, Root, "largestRange", basis?.LargestRange.Degrees, 0);
        return new(name, limits[0], limits[1], limits[2], Angle.FromDegrees(drop), Angle.FromDegrees(range));
    }

    private void CheckFormat(JsonElement root)
    {
        string expected = $"expected \"{StandardFile.Format}\".";
        if (!root.TryGetProperty("format", out JsonElement format))
        {
            report.Missing($"{Root}.format", $"missing: {expected}");
        }
        else if (format.ValueKind != JsonValueKind.String || !format.ValueEquals(StandardFile.Format))
        {
            report.Error($"{Root}.format", format, $"is not the format that is read here: {expected}");
        }
    }

    private string Name(JsonElement root)
    {
        const string Path = Root + ".name";
        if (!root.TryGetProperty("name", out JsonElement element))
        {
            report.Missing(Path, "missing: expected what the club calls this standard, in quote marks.");
            return "";
        }

        string name = element.ValueKind == JsonValueKind.String ? NameText.Tidy(CellText.Trim(element.GetString())) : "";
        if (name.Length is 0 or > NameText.Longest || NameText.HasHiddenCharacters(name))
        {
            report.Error(Path, element, string.Create(CultureInfo.InvariantCulture, $"is not a name: expected text of 1 to {NameText.Longest} visible characters, in quote marks."));
        }
        else if (Standard.BuiltIn.Any(s => NameText.Key(s.Name) == NameText.Key(name)))
        {
            report.Warn(Path, element, "is also the name of a built-in standard, and a verdict does not tell them apart: choose another name.");
        }

        return name;
    }

    /// <summary>The built-in standard that the file changes.</summary>
    /// <param name="root">The file.</param>
    /// <param name="isComplete">Whether the file has to give every value itself.</param>
    private Standard? Basis(JsonElement root, out bool isComplete)
    {
        isComplete = !root.TryGetProperty("extends", out JsonElement extends);
        if (isComplete)
        {
            return null;
        }

        Standard? basis = extends.ValueKind == JsonValueKind.String
            ? Standard.BuiltIn.FirstOrDefault(s => extends.ValueEquals(s.Name))
            : null;
        if (basis is null)
        {
            report.Error($"{Root}.extends", extends, $"is not a built-in standard: expected {s_builtIn}.");
        }

        return basis;
    }
}
