using System.Text.Json;
using System.Text.Json.Nodes;
using Gatewright.Cli.Tests.Harness;
using Json.Schema;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>The program's real output against docs/check.schema.json.</summary>
public sealed class JsonTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText("docs/check.schema.json"));

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void A_check_is_as_the_schema_says(string file)
    {
        ProgramRun run = ProgramRun.Of("check", file, "--json");
        Assert.Equal(string.Empty, run.Error);
        AssertValid(run.Output);
    }

    [Fact]
    public void Problems_are_as_the_schema_says_and_told_in_words_too()
    {
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Wrong, "--json");
        Assert.Equal(2, run.Status);
        AssertValid(run.Output);
        using JsonDocument document = JsonDocument.Parse(run.Output);
        Assert.Equal("gatewright.problems/1", document.RootElement.GetProperty("format").GetString());
        Assert.Equal(4, document.RootElement.GetProperty("errors").GetArrayLength());
        Assert.Contains("4 errors. Nothing was judged.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_small_shed_is_written_as_expected() =>
        Expectation.Matches("small-shed-json", ProgramRun.Of("check", ExampleFiles.Small, "--json").Output);

    [Fact]
    public void The_same_input_gives_the_same_bytes() =>
        Assert.Equal(
            ProgramRun.Of("check", ExampleFiles.Shed, "--json").Output,
            ProgramRun.Of("check", ExampleFiles.Shed, "--json").Output);

    /// <summary>The schema is not so loose that it accepts anything: each key taken away or added must be refused.</summary>
    [Fact]
    public void The_schema_refuses_a_key_too_few_or_too_many()
    {
        string output = ProgramRun.Of("check", ExampleFiles.Small, "--json").Output;
        int refused = 0;
        foreach (string path in ObjectPaths(JsonNode.Parse(output)!))
        {
            foreach (string? key in Keys(output, path).Append(null))
            {
                JsonNode spoilt = JsonNode.Parse(output)!;
                JsonObject at = At(spoilt, path);
                if (key is null)
                {
                    at["surplus"] = 1;
                }
                else
                {
                    at.Remove(key);
                }

                Assert.False(IsValid(spoilt.ToJsonString()), $"accepted {path} {(key is null ? "with a surplus key" : $"without '{key}'")}");
                refused++;
            }
        }

        // Some sixteen kinds of object, each with two keys at least.
        Assert.True(refused > 100, $"only {refused} cases");
    }

    [Theory]
    [InlineData("$.boats[0].verdict", "safe")]
    [InlineData("$.boats[0].class", "9+")]
    [InlineData("$.boats[0].seats[0].pitch[0].at", "abeam")]
    [InlineData("$.format", "gatewright.check/2")]
    public void The_schema_refuses_a_word_that_is_none_of_the_format_s(string path, string word)
    {
        JsonNode spoilt = JsonNode.Parse(ProgramRun.Of("check", ExampleFiles.Small, "--json").Output)!;
        int dot = path.LastIndexOf('.');
        At(spoilt, path[..dot])[path[(dot + 1)..]] = word;
        Assert.False(IsValid(spoilt.ToJsonString()));
    }

    private static void AssertValid(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        EvaluationResults results = Schema.Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.True(results.IsValid, string.Join('\n', (results.Details ?? [])
            .Where(detail => detail.Errors is { Count: > 0 })
            .Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}")));
    }

    private static bool IsValid(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    /// <summary>The path of one object of each kind: the first boat or seat that has it.</summary>
    private static List<string> ObjectPaths(JsonNode root)
    {
        var kinds = new HashSet<string>();
        return Objects(root).Select(o => o.GetPath()).Where(path => kinds.Add(Kind(path))).ToList();

        // All seats are alike, and so on: paths that differ in their indices alone are of one kind.
        static string Kind(string path) => string.Concat(path.Where(c => !char.IsDigit(c)));
    }

    private static IEnumerable<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject o => o.SelectMany(property => Objects(property.Value)).Prepend(o),
        JsonArray a => a.SelectMany(Objects),
        _ => [],
    };

    private static List<string> Keys(string json, string path) => [.. At(JsonNode.Parse(json)!, path).Select(property => property.Key)];

    private static JsonObject At(JsonNode root, string path) =>
        Objects(root).First(o => o.GetPath() == path);
}
