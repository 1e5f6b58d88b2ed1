using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Cli.Tests.CheckShed;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Store;

namespace Gatewright.Cli.Tests.Clubs;

/// <summary>A club is judged as the files it was recorded from: the tables of examples/README.md say how that is.</summary>
public sealed class ClubVerdictTests(ClubStores stores)
{
    [Theory]
    [InlineData(Engine.Sqlite)]
    [InlineData(Engine.Postgres)]
    public async Task Recorded_boats_have_the_verdicts_that_their_tables_promise(Engine engine)
    {
        ClubPlace place = await stores.NewAsync(engine);
        var files = ExampleVerdictTests.Rows().ToLookup(row => row.File);
        Assert.True(files.Count > 1);
        foreach (IGrouping<string, (string File, string Boat, string Verdict)> file in files)
        {
            string club = Path.GetFileNameWithoutExtension(file.Key);
            Assert.Equal(0, place.RecordNew(file.Key, club).Status);
            Assert.Equal(
                file.ToDictionary(row => row.Boat, row => row.Verdict),
                Verdicts(place.Run("check", "--json", "--club", club)));
        }
    }

    [Fact]
    public async Task The_shelf_is_the_club_s_own()
    {
        ClubPlace place = await stores.NewAsync();
        place.RecordNew(ExampleFiles.Shed);
        place.Run("record", "--stores", ExampleFiles.Stores, "--member", "kim");
        using var ofClub = JsonDocument.Parse(place.Run("mend", "--json").Output);
        using var ofFiles = JsonDocument.Parse(ProgramRun.Of("mend", ExampleFiles.Shed, "--stores", ExampleFiles.Stores, "--json").Output);
        using var bare = JsonDocument.Parse(ProgramRun.Of("mend", ExampleFiles.Shed, "--json").Output);
        foreach (string key in (string[])["takeAlong", "shopping"])
        {
            Assert.Equal(Property(ofFiles, key), Property(ofClub, key));
            Assert.NotEqual(Property(bare, key), Property(ofClub, key));
        }
    }

    /// <summary>Whatever was read, the journal keeps it as it was read.</summary>
    [Property(MaxTest = 12)]
    public Property A_single_read_anyhow_is_judged_alike() => Prop.ForAll(
        (from gates in Gen.ArrayOf(Gen.Choose(-20, 120), 3) select gates).ToArbitrary(),
        tenths =>
        {
            using var file = new TemporaryFile([Readings.Single("Teal", tenths[0] / 10.0, tenths[1] / 10.0, tenths[2] / 10.0).TrimEnd()]);
            ClubPlace place = stores.NewAsync().GetAwaiter().GetResult();
            Assert.Equal(0, place.RecordNew(file.Path).Status);
            ProgramRun ofClub = place.Run("check", "--json");
            ProgramRun ofFile = ProgramRun.Of("check", file.Path, "--json");
            return ofClub.Status == ofFile.Status && Verdicts(ofClub)["Teal"] == Verdicts(ofFile)["Teal"];
        });

    private static string Property(JsonDocument plan, string key) => plan.RootElement.GetProperty(key).GetRawText();

    private static Dictionary<string, string> Verdicts(ProgramRun run)
    {
        using var document = JsonDocument.Parse(run.Output);
        return document.RootElement.GetProperty("boats").EnumerateArray().ToDictionary(
            boat => boat.GetProperty("boat").GetString()!, boat => boat.GetProperty("verdict").GetString()!);
    }
}
