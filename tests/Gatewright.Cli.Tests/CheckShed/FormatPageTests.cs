using System.Text.Json;
using System.Text.RegularExpressions;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>docs/check-format.md and docs/check.schema.json name the same objects and the same keys, in the same order.</summary>
public sealed partial class FormatPageTests
{
    [Fact]
    public void The_page_and_the_schema_have_the_same_objects() =>
        Assert.Equal(Schema().Keys.Order(StringComparer.Ordinal), Page().Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void Each_object_has_the_same_keys_on_the_page_as_in_the_schema()
    {
        Dictionary<string, List<string>> page = Page();
        foreach ((string name, List<string> keys) in Schema())
        {
            Assert.True(keys.SequenceEqual(page[name]), $"{name}: schema {string.Join(' ', keys)}, page {string.Join(' ', page[name])}");
        }
    }

    private static Dictionary<string, List<string>> Schema()
    {
        using JsonDocument schema = JsonDocument.Parse(File.ReadAllText("docs/check.schema.json"));
        return schema.RootElement.GetProperty("$defs").EnumerateObject().ToDictionary(
            definition => definition.Name,
            definition => definition.Value.GetProperty("properties").EnumerateObject().Select(p => p.Name).ToList());
    }

    /// <summary>A heading of the second rank is an object, the first column of the table under it has its keys.</summary>
    private static Dictionary<string, List<string>> Page()
    {
        var objects = new Dictionary<string, List<string>>();
        List<string> keys = [];
        foreach (string line in File.ReadLines("docs/check-format.md"))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                objects.Add(line[3..], keys = []);
            }
            else if (Row().Match(line) is { Success: true } row)
            {
                keys.Add(row.Groups[1].Value);
            }
        }

        return objects;
    }

    [GeneratedRegex(@"^\| `([A-Za-z]+)` \|")]
    private static partial Regex Row();
}
