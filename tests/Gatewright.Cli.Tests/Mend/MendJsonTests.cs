using System.Text.Json;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Mend;

/// <summary>The program's real output against docs/mend.schema.json.</summary>
public sealed class MendJsonTests
{
    private static readonly SchemaFile s_schema = new("docs/mend.schema.json");

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void A_plan_is_as_the_schema_says(string file)
    {
        foreach (string[] more in (string[][])[[], ["--stores", ExampleFiles.Stores], ["--standard", "race", "--stores", ExampleFiles.Stores]])
        {
            ProgramRun run = ProgramRun.Of(["mend", file, "--json", .. more]);
            Assert.Equal(string.Empty, run.Error);
            s_schema.AssertValid(run.Output);
        }
    }

    [Fact]
    public void Problems_are_as_the_schema_says()
    {
        ProgramRun run = ProgramRun.Of("mend", ExampleFiles.Wrong, "--json");
        Assert.Equal(2, run.Status);
        s_schema.AssertValid(run.Output);
    }

    [Fact]
    public void A_small_shed_is_written_as_expected() => Expectation.Matches(
        "mend-json", ProgramRun.Of("mend", ExampleFiles.Small, "--stores", "Data/stores.csv", "--json").Output);

    [Fact]
    public void The_same_input_gives_the_same_bytes()
    {
        string[] args = ["mend", ExampleFiles.Shed, "--stores", ExampleFiles.Stores, "--json"];
        Assert.Equal(ProgramRun.Of(args).Output, ProgramRun.Of(args).Output);
    }

    [Fact]
    public void The_schema_refuses_a_key_too_few_or_too_many()
    {
        int refused = s_schema.AssertRefusesKeysTooFewOrTooMany(
            ProgramRun.Of("mend", ExampleFiles.Shed, "--stores", ExampleFiles.Stores, "--json").Output);

        // Some twelve kinds of object, each with two keys at least.
        Assert.True(refused > 60, $"only {refused} cases");
    }

    [Theory]
    [InlineData("$.boats[0].verdict", "safe")]
    [InlineData("$.boats[0].outcome", "done")]
    [InlineData("$.boats[0].readAgain", "yes")]
    [InlineData("$.aims[0].aim", "beauty")]
    [InlineData("$.format", "gatewright.mend/2")]
    public void The_schema_refuses_a_word_that_is_none_of_the_format_s(string path, string word) => s_schema.AssertRefuses(
        ProgramRun.Of("mend", ExampleFiles.Shed, "--stores", ExampleFiles.Stores, "--json").Output, path, word);

    [Fact]
    public void The_totals_are_those_of_the_boats()
    {
        using JsonDocument plan = JsonDocument.Parse(
            ProgramRun.Of("mend", ExampleFiles.Shed, "--stores", ExampleFiles.Stores, "--json").Output);
        List<JsonElement> boats = [.. plan.RootElement.GetProperty("boats").EnumerateArray()];
        JsonElement totals = plan.RootElement.GetProperty("totals");

        Assert.Equal(boats.Count, totals.GetProperty("boats").GetInt32());
        foreach ((string total, string outcome) in new[]
            { ("good", "good"), ("mended", "mended"), ("aboveFloors", "above-floors"), ("left", "left"), ("readAgain", "read-again") })
        {
            Assert.Equal(boats.Count(b => b.GetProperty("outcome").GetString() == outcome), totals.GetProperty(total).GetInt32());
        }

        Assert.Equal(boats.Sum(b => b.GetProperty("minutes").GetInt32()), totals.GetProperty("minutes").GetInt32());
        Assert.Equal(
            boats.Sum(b => b.GetProperty("jobs").EnumerateArray().Sum(j => j.GetProperty("parts").GetArrayLength())),
            totals.GetProperty("parts").GetInt32());
        Assert.True(totals.GetProperty("proven").GetBoolean());
    }
}
