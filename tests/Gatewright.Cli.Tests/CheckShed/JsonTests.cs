using System.Text.Json;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>The program's real output against docs/check.schema.json.</summary>
public sealed class JsonTests
{
    private static readonly SchemaFile s_schema = new("docs/check.schema.json");

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void A_check_is_as_the_schema_says(string file)
    {
        ProgramRun run = ProgramRun.Of("check", file, "--json");
        Assert.Equal(string.Empty, run.Error);
        s_schema.AssertValid(run.Output);
    }

    [Fact]
    public void Problems_are_as_the_schema_says_and_told_in_words_too()
    {
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Wrong, "--json");
        Assert.Equal(2, run.Status);
        s_schema.AssertValid(run.Output);
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

    [Fact]
    public void The_schema_refuses_a_key_too_few_or_too_many()
    {
        int refused = s_schema.AssertRefusesKeysTooFewOrTooMany(ProgramRun.Of("check", ExampleFiles.Small, "--json").Output);

        // Some sixteen kinds of object, each with two keys at least.
        Assert.True(refused > 100, $"only {refused} cases");
    }

    [Theory]
    [InlineData("$.boats[0].verdict", "safe")]
    [InlineData("$.boats[0].class", "9+")]
    [InlineData("$.boats[0].seats[0].pitch[0].at", "abeam")]
    [InlineData("$.format", "gatewright.check/2")]
    public void The_schema_refuses_a_word_that_is_none_of_the_format_s(string path, string word) =>
        s_schema.AssertRefuses(ProgramRun.Of("check", ExampleFiles.Small, "--json").Output, path, word);
}
