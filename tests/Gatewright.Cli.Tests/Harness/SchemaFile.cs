using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>A JSON Schema of docs, and the program's real output against it.</summary>
internal sealed class SchemaFile(string path)
{
    private readonly JsonSchema _schema = JsonSchema.FromText(File.ReadAllText(path));

    public void AssertValid(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        EvaluationResults results = _schema.Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.True(results.IsValid, string.Join('\n', (results.Details ?? [])
            .Where(detail => detail.Errors is { Count: > 0 })
            .Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}")));
    }

    public bool IsValid(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return _schema.Evaluate(document.RootElement).IsValid;
    }

    /// <summary>
    /// Takes each key of each kind of object away, and adds one, and asserts that the schema refuses it: it is not so
    /// loose that it accepts anything.
    /// </summary>
    /// <returns>How many were refused.</returns>
    public int AssertRefusesKeysTooFewOrTooMany(string output)
    {
        int refused = 0;
        foreach (string at in ObjectPaths(JsonNode.Parse(output)!))
        {
            foreach (string? key in Keys(output, at).Append(null))
            {
                JsonNode spoilt = JsonNode.Parse(output)!;
                JsonObject owner = At(spoilt, at);
                if (key is null)
                {
                    owner["surplus"] = 1;
                }
                else
                {
                    owner.Remove(key);
                }

                Assert.False(IsValid(spoilt.ToJsonString()), $"accepted {at} {(key is null ? "with a surplus key" : $"without '{key}'")}");
                refused++;
            }
        }

        return refused;
    }

    /// <summary>Puts a word in place of another, and asserts that the schema refuses it.</summary>
    public void AssertRefuses(string output, string at, string word)
    {
        JsonNode spoilt = JsonNode.Parse(output)!;
        int dot = at.LastIndexOf('.');
        At(spoilt, at[..dot])[at[(dot + 1)..]] = word;
        Assert.False(IsValid(spoilt.ToJsonString()));
    }

    /// <summary>The path of one object of each kind: the first boat or seat that has it.</summary>
    private static List<string> ObjectPaths(JsonNode root)
    {
        var kinds = new HashSet<string>();
        return Objects(root).Select(o => o.GetPath()).Where(at => kinds.Add(Kind(at))).ToList();

        // All seats are alike, and so on: paths that differ in their indices alone are of one kind.
        static string Kind(string at) => string.Concat(at.Where(c => !char.IsDigit(c)));
    }

    private static IEnumerable<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject o => o.SelectMany(property => Objects(property.Value)).Prepend(o),
        JsonArray a => a.SelectMany(Objects),
        _ => [],
    };

    private static List<string> Keys(string json, string at) => [.. At(JsonNode.Parse(json)!, at).Select(property => property.Key)];

    private static JsonObject At(JsonNode root, string at) => Objects(root).First(o => o.GetPath() == at);
}
