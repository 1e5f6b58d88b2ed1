using System.Text;
using System.Text.Json;
using Gatewright.Cli.Tests.Clubs;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Rigs;

/// <summary>The rig in the terminal.</summary>
public sealed class RigTests(ClubStores stores)
{
    private static readonly SchemaFile s_schema = new("docs/check.schema.json");

    [Fact]
    public void Rigs_are_drawn_as_expected()
    {
        ProgramRun run = ProgramRun.Of("rig", ExampleFiles.Rig, "--crew", "women", "--width", "80");

        Expectation.Matches("rig", run.Output);
        Assert.Equal((1, string.Empty), (run.Status, run.Error));
    }

    [Fact]
    public void Rigs_are_told_as_expected() =>
        Expectation.Matches("rig-plain", ProgramRun.Of("rig", ExampleFiles.Rig, "--boat", "sandpiper", "--plain").Output);

    [Fact]
    public void Targets_are_listed_as_expected() =>
        Expectation.Matches("targets", ProgramRun.Of("targets", "--class", "2x", "--crew", "light-women", "--width", "100").Output);

    [Theory]
    [InlineData("rig", ExampleFiles.Rig)]
    [InlineData("rig", ExampleFiles.Rig, "--boat", "Dunlin")]
    [InlineData("check", ExampleFiles.Rig)]
    [InlineData("check", ExampleFiles.Rig, ExampleFiles.Small)]
    [InlineData("targets", "--class", "8+")]
    public void What_is_written_for_programs_is_as_the_schema_says(params string[] args)
    {
        ProgramRun run = ProgramRun.Of([.. args, "--json"]);

        Assert.Equal(string.Empty, run.Error);
        s_schema.AssertValid(run.Output);
    }

    [Fact]
    public void The_schema_refuses_a_key_too_few_or_too_many() =>
        Assert.True(s_schema.AssertRefusesKeysTooFewOrTooMany(ProgramRun.Of("rig", ExampleFiles.Rig, "--json").Output) > 30);

    [Theory]
    [InlineData("$.rigs[0].verdict", "stop")]
    [InlineData("$.rigs[0].figures[0].measure", "reach")]
    [InlineData("$.rigs[0].targets[0].source", "rumour")]
    public void The_schema_refuses_a_word_that_is_none_of_the_format_s(string path, string word) =>
        s_schema.AssertRefuses(ProgramRun.Of("rig", ExampleFiles.Rig, "--json").Output, path, word);

    [Fact]
    public void A_check_judges_the_rig_too()
    {
        ProgramRun run = ProgramRun.Of("check", ExampleFiles.Rig, "--json");
        using JsonDocument document = JsonDocument.Parse(run.Output);

        Assert.Equal(1, run.Status);
        Assert.Equal(0, document.RootElement.GetProperty("boats").GetArrayLength());
        Assert.Equal(["Sandpiper", "Dunlin"], document.RootElement.GetProperty("rigs").EnumerateArray().Select(r => r.GetProperty("boat").GetString()!));
        Assert.Contains("The rig of Sandpiper", ProgramRun.Of("check", ExampleFiles.Rig).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_good_rig_ends_with_0()
    {
        using var file = new TemporaryFile(["boat,class,seat,side,item,reading", "Teal,2x,1,,span,159.3"]);

        Assert.Equal(0, ProgramRun.Of("rig", file.Path, "--crew", "women").Status);
        Assert.Equal(0, ProgramRun.Of("check", file.Path).Status);
    }

    [Fact]
    public void A_boat_is_found_by_its_name_and_another_is_an_error()
    {
        Assert.DoesNotContain("Dunlin", ProgramRun.Of("check", ExampleFiles.Rig, "--boat", "Sandpiper", "--plain").Output, StringComparison.Ordinal);
        ProgramRun run = ProgramRun.Of("rig", ExampleFiles.Rig, "--boat", "Puffin");
        Assert.Equal(2, run.Status);
        Assert.Contains("--boat: 'Puffin' is none of the boats whose rig is known: Sandpiper, Dunlin.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Lengths_are_told_in_inches_on_request() => Expectation.Matches(
        "rig-inches", ProgramRun.Of("rig", ExampleFiles.Rig, "--boat", "Dunlin", "--inches", "--width", "80").Output);

    [Fact]
    public async Task A_club_s_rigs_are_those_recorded_by_the_club_s_targets()
    {
        ClubPlace place = await stores.NewAsync();
        Assert.Contains("36 measures of the rig", place.RecordNew(ExampleFiles.Rig).Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        ProgramRun rig = place.Run("rig", "--boat", "Dunlin", "--crew", "men", "--json");
        using JsonDocument document = JsonDocument.Parse(rig.Output);
        JsonElement figure = document.RootElement.GetProperty("rigs")[0].GetProperty("figures")[0];

        s_schema.AssertValid(rig.Output);
        Assert.Equal(("kim", "2026-10-11"), (figure.GetProperty("member").GetString(), figure.GetProperty("date").GetString()));
        Assert.Equal(1, place.Run("check").Status);
        Assert.Contains("The rig of Sandpiper", place.Run("check", "--width", "80").Output, StringComparison.Ordinal);
        Assert.Equal(0, place.Run("targets", "--class", "2x").Status);
    }

    [Fact]
    public async Task A_club_sets_its_own_targets()
    {
        ClubPlace place = await stores.NewAsync();
        place.RecordNew(ExampleFiles.Rig);
        await place.JoinAsync("shed", "ash", "keeper");
        await place.JoinAsync("shed", "elm", "helper");

        ProgramRun set = place.Run("targets", "--class", "2x", "--set", "span=158+-1", "--set", "height/port=6.5±0.5in", "--member", "ash", "--plain");
        Assert.Equal((0, string.Empty), (set.Status, set.Error));
        Assert.Contains("Span 158 cm, from 157 to 159 (set by the club for class and crew).", set.Lines);
        Assert.Contains("Height port 16.51 cm, from 15.24 to 17.78 (set by the club for class and crew).", set.Lines);
        Assert.Equal(0, place.Run("targets", "--boat", "Sandpiper", "--set", "span/2=162+-0.5", "--member", "ash").Status);
        Assert.Contains("\"tolerance\": 0.5,\n          \"source\": \"boat\"", place.Run("rig", "--boat", "Sandpiper", "--json").Output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.DoesNotContain("for this boat", place.Run("targets", "--boat", "Sandpiper", "--set", "span/2=", "--member", "ash").Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_may_not_set_targets_and_what_is_none_is_told()
    {
        ClubPlace place = await stores.NewAsync();
        place.RecordNew(ExampleFiles.Rig);
        await place.JoinAsync("shed", "elm", "helper");
        int count = (await place.ClubAsync("shed")).Count;

        Assert.Contains("'elm' is a helper of the club: its keepers set targets.", place.Run("targets", "--class", "2x", "--set", "span=158+-1", "--member", "elm").Error, StringComparison.Ordinal);
        ProgramRun wrong = place.Run("targets", "--class", "2x", "--set", "reach=1+-1", "--set", "span=1.6+-1", "--set", "span=160", "--set", "oar-length/2/port=43±1in", "--member", "elm");
        Assert.Equal(2, wrong.Status);
        Assert.Contains("--set: 'reach=1+-1' is no target: expected", wrong.Error, StringComparison.Ordinal);
        Assert.Contains("--set: 'span=160' is no target: expected", wrong.Error, StringComparison.Ordinal);
        Assert.Contains("--set: 'span=1.6+-1' is a target that no span can have: give 120 to 190 cm.", wrong.Error, StringComparison.Ordinal);
        Assert.Contains("--set: 'oar-length/2/port=43±1in' is a target that no oar-length can have: give 78.7 to 165.4 in.", wrong.Error, StringComparison.Ordinal);
        Assert.Equal(2, ProgramRun.Of("targets", "--class", "2x", "--set", "span=158+-1").Status);
        Assert.Equal(2, ProgramRun.Of("targets").Status);
        Assert.Equal(count, (await place.ClubAsync("shed")).Count);
    }

    [Fact]
    public void A_file_without_a_measure_is_no_rig()
    {
        ProgramRun run = ProgramRun.Of("rig", ExampleFiles.Small);

        Assert.Equal(2, run.Status);
        Assert.Contains("nothing of a rig was measured", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Plain_lines_are_words()
    {
        string[] lines = ProgramRun.Of("rig", ExampleFiles.Rig, "--plain").Lines;
        Assert.All(lines, line => Assert.True(Ascii.IsValid(line), line));
        Assert.All(lines.Where(l => l.Length > 0), line => Assert.True(char.IsUpper(line[0]) && line[^1] is '.' or ':', line));
    }

    [Theory]
    [InlineData(80)]
    [InlineData(72)]
    [InlineData(40)]
    public void No_line_is_wider_than_asked(int width) => Assert.All(
        ProgramRun.Of("rig", ExampleFiles.Rig, "--width", width.ToString(System.Globalization.CultureInfo.InvariantCulture)).Lines,
        line => Assert.True(line.Length <= width, line));
}
