using System.Text.Json;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Store;

namespace Gatewright.Cli.Tests.Clubs;

/// <summary>Readings from files into a club's journal.</summary>
public sealed class RecordTests(ClubStores stores)
{
    [Theory]
    [InlineData(Engine.Sqlite)]
    [InlineData(Engine.Postgres)]
    public async Task Recorded_twice_it_is_on_record_once(Engine engine)
    {
        ClubPlace place = await stores.NewAsync(engine);
        ProgramRun first = place.RecordNew(ExampleFiles.Shed);
        ProgramRun second = place.RecordNew(ExampleFiles.Shed);
        int count = (await place.ClubAsync("shed")).Count;

        Assert.Equal((0, 0), (first.Status, second.Status));
        Assert.Contains(" 377 readings,", first.Output.Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal("Nothing new for shed (The shed): all of it is on record already.\n", second.Output);
        using var told = JsonDocument.Parse(place.Run("record", ExampleFiles.Stores.Replace("stores", "shed", StringComparison.Ordinal), "--stores", ExampleFiles.Stores, "--member", "kim", "--json").Output);
        Assert.Equal(told.RootElement.GetProperty("newEntries").GetInt32(), (await place.ClubAsync("shed")).Count - count);
        Assert.Equal(["stock-counted"], told.RootElement.GetProperty("kinds").EnumerateObject().Select(k => k.Name));
    }

    [Fact]
    public async Task The_example_shed_has_as_many_readings_as_rows()
    {
        ClubPlace place = await stores.NewAsync();
        using var told = JsonDocument.Parse(place.Run("record", ExampleFiles.Small, "--member", "kim", "--club", "c", "--new-club", "C", "--json").Output);
        Assert.Equal(File.ReadLines(ExampleFiles.Small).Count(line => line.Trim().Length > 0) - 1, told.RootElement.GetProperty("kinds").GetProperty("reading").GetInt32());
    }

    [Fact]
    public async Task Of_wrong_files_everything_is_told_and_nothing_recorded()
    {
        ClubPlace place = await stores.NewAsync();
        ProgramRun run = place.Run(
            "record", ExampleFiles.Wrong, "Data/missing.csv", "--stores", "Data/wrong-stores.csv", "--member", "kim", "--club", "c", "--new-club", "C");
        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.Contains("Data/wrong.csv, line", run.Error, StringComparison.Ordinal);
        Assert.Contains("Data/missing.csv: there is no such file.", run.Error, StringComparison.Ordinal);
        Assert.Contains("Data/wrong-stores.csv, line", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("Nothing was recorded.\n", run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(place.Name));
    }

    [Fact]
    public async Task A_stranger_records_nothing_where_the_club_has_members()
    {
        ClubPlace place = await stores.NewAsync();
        place.RecordNew(ExampleFiles.Small);
        await place.JoinAsync("shed", "ash", "keeper");
        await place.JoinAsync("shed", "elm", "helper");
        await place.JoinAsync("shed", "oak", "former");
        int count = (await place.ClubAsync("shed")).Count;
        foreach (string member in (string[])["kim", "oak"])
        {
            ProgramRun run = place.Run("record", ExampleFiles.Shed, ExampleFiles.Wrong, "--member", member);
            Assert.Equal(2, run.Status);
            Assert.Contains($"--member: '{member}' is no member of the club shed. Its members: ash (keeper), elm (helper).", run.Error, StringComparison.Ordinal);
            Assert.Contains("Data/wrong.csv, line", run.Error, StringComparison.Ordinal);
        }

        Assert.Equal(count, (await place.ClubAsync("shed")).Count);
        Assert.Equal(0, place.Run("record", ExampleFiles.Shed, "--member", "elm").Status);
        Assert.Contains("1 helper, 1 keeper", place.Run("club", "list", "--plain").Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_club_that_is_not_there_is_made_only_when_asked_for()
    {
        ClubPlace place = await stores.NewAsync();
        Assert.Equal(74, place.Run("record", ExampleFiles.Small, "--member", "kim", "--club", "c").Status);
        place.RecordNew(ExampleFiles.Small);
        ProgramRun run = place.Run("record", ExampleFiles.Small, "--member", "kim", "--club", "c");
        Assert.Equal(2, run.Status);
        Assert.Contains("Its clubs: shed (The shed). --new-club NAME makes it.", run.Error, StringComparison.Ordinal);
        Assert.Contains(
            "the club shed (The shed) is there already",
            place.Run("record", ExampleFiles.Small, "--member", "kim", "--club", "shed", "--new-club", "Another").Error,
            StringComparison.Ordinal);
        Assert.Contains(
            "say with --club", place.Run("record", ExampleFiles.Small, "--member", "kim", "--new-club", "D").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("c", "")]
    [InlineData("", "kim")]
    [InlineData("c", "kim\nlee")]
    [InlineData("0123456789012345678901234567890123456789012345678901234567890123456789", "kim")]
    public async Task An_id_that_no_journal_takes_is_told_of(string club, string member)
    {
        ClubPlace place = await stores.NewAsync();
        ProgramRun run = place.Run("record", ExampleFiles.Small, "--member", member, "--club", club, "--new-club", "C");
        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.EndsWith("Nothing was recorded.\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pipe_is_recorded()
    {
        ClubPlace place = await stores.NewAsync();
        ProgramRun run = ProgramRun.Of(
            ["record", "--member", "kim", "--club", "c", "--new-club", "C", .. place.Options], new(Readings.Single("Teal")));
        Assert.Contains("6 readings", run.Output, StringComparison.Ordinal);
    }
}
