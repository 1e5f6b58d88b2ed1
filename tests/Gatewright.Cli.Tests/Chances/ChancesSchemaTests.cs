using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Chances;

/// <summary>The file and the program's real output against docs/chances.schema.json, and that against its page.</summary>
public sealed class ChancesSchemaTests
{
    private static readonly SchemaFile s_schema = new("docs/chances.schema.json");
    private static readonly FormatPage s_page = new("docs/chances.md", "docs/chances.schema.json");

    [Fact]
    public void The_page_and_the_schema_have_the_same_objects() => s_page.AssertSameObjects();

    [Fact]
    public void Each_object_has_the_same_keys_on_the_page_as_in_the_schema() => s_page.AssertSameKeys();

    [Fact]
    public void The_file_and_every_answer_are_as_the_schema_says()
    {
        using var file = new ChancesFile();
        s_schema.AssertValid(file.Run("learn", ExampleFiles.Jobs, "--json").Output);
        s_schema.AssertValid(file.Text);
        s_schema.AssertValid(file.Run("--json").Output);
        s_schema.AssertValid(file.Run("reset", "--json").Output);
        s_schema.AssertValid(file.Text);
        s_schema.AssertValid(ProgramRun.Of("chances", "--json").Output);
        s_schema.AssertValid(ProgramRun.Of("chances", "--json", "--chances", "Data/missing.json").Output);
    }

    [Fact]
    public void The_schema_refuses_a_key_too_few_or_too_many()
    {
        // Three kinds of object: the whole, the jobs counted, and a number.
        Assert.Equal(
            (7 + 1) + (4 + 1) + (8 + 1), s_schema.AssertRefusesKeysTooFewOrTooMany(ProgramRun.Of("chances", "--json").Output));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{ "format": "gatewright.chances/2" }""")]
    [InlineData("""{ "format": "gatewright.chances/1", "chances": { "rigger": 1 } }""")]
    [InlineData("""{ "format": "gatewright.chances/1", "reports": { "knock": { "peak": 0.5 } } }""")]
    [InlineData("""{ "format": "gatewright.chances/1", "jobs": [{ "checked": "level", "boat": "Heron", "seat": 3, "date": "2026-05-02", "found": "none" }] }""")]
    [InlineData("""{ "format": "gatewright.chances/1", "jobs": [{ "checked": "gauge", "gauge": "G1", "date": "2026-05-02", "found": "rigger" }] }""")]
    public void What_the_program_refuses_the_schema_refuses(string text)
    {
        using var file = new ChancesFile();
        File.WriteAllText(file.Path, text);
        Assert.Equal(2, file.Run().Status);
        Assert.False(s_schema.IsValid(text));
    }
}
