using System.Text.Json;
using System.Text.RegularExpressions;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>A page of docs that describes a JSON format, beside its schema: the same objects with the same keys in the same order.</summary>
internal sealed partial class FormatPage(string page, string schema)
{
    public void AssertSameObjects() =>
        Assert.Equal(Schema().Keys.Order(StringComparer.Ordinal), Page().Keys.Order(StringComparer.Ordinal));

    public void AssertSameKeys()
    {
        Dictionary<string, List<string>> described = Page();
        foreach ((string name, List<string> keys) in Schema())
        {
            Assert.True(
                keys.SequenceEqual(described[name]), $"{name}: schema {string.Join(' ', keys)}, page {string.Join(' ', described[name])}");
        }
    }

    private Dictionary<string, List<string>> Schema()
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(schema));
        return document.RootElement.GetProperty("$defs").EnumerateObject().ToDictionary(
            definition => definition.Name,
            definition => definition.Value.GetProperty("properties").EnumerateObject().Select(p => p.Name).ToList());
    }

    /// <summary>A heading of the second rank with a table of keys under it is an object; other tables tell other things.</summary>
    private Dictionary<string, List<string>> Page()
    {
        var objects = new Dictionary<string, List<string>>();
        List<string> keys = [];
        bool isOfKeys = false;
        foreach (string line in File.ReadLines(page))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                objects.Add(line[3..], keys = []);
            }
            else if (isOfKeys && Row().Match(line) is { Success: true } row)
            {
                keys.Add(row.Groups[1].Value);
            }

            isOfKeys = line.StartsWith("| key |", StringComparison.Ordinal) || (isOfKeys && line.StartsWith('|'));
        }

        return objects.Where(o => o.Value.Count > 0).ToDictionary();
    }

    [GeneratedRegex(@"^\| `([A-Za-z]+)` \|")]
    private static partial Regex Row();
}
