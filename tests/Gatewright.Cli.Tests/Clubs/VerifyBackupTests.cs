using System.Text.Json;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Store;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Cli.Tests.Clubs;

/// <summary>A store looked through, backed up and restored.</summary>
public sealed class VerifyBackupTests(ClubStores stores)
{
    [Theory]
    [InlineData(Engine.Sqlite)]
    [InlineData(Engine.Postgres)]
    public async Task An_entry_that_was_changed_is_found(Engine engine)
    {
        ClubPlace place = await stores.NewAsync(engine);
        place.RecordNew(ExampleFiles.Small);
        ProgramRun sound = place.Run("club", "verify");
        await using (Store.Schema.StoreDb db = place.Location.Open())
        {
            await db.Entries.Where(e => e.Number == 7)
                .ExecuteUpdateAsync(set => set.SetProperty(e => e.Member, "somebody"), TestContext.Current.CancellationToken);
        }

        ProgramRun changed = place.Run("club", "verify", "--plain");
        Assert.Equal((0, 1), (sound.Status, changed.Status));
        Assert.Contains("all as it was written", sound.Output.Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("Fault, club shed, entry 7:", changed.Output, StringComparison.Ordinal);
        using var told = JsonDocument.Parse(place.Run("club", "verify", "--json").Output);
        Assert.False(told.RootElement.GetProperty("sound").GetBoolean());
        Assert.Equal(7, told.RootElement.GetProperty("findings")[0].GetProperty("number").GetInt64());
    }

    [Theory]
    [InlineData("check")]
    [InlineData("mend")]
    [InlineData("club", "list")]
    [InlineData("club", "changes", "--from", "2026-01-01")]
    [InlineData("record", ExampleFiles.Small, "--member", "kim")]
    public async Task A_club_that_cannot_be_read_ends_with_74_and_points_to_verify(params string[] command)
    {
        ClubPlace place = await stores.NewAsync();
        place.RecordNew(ExampleFiles.Small);
        await using (Store.Schema.StoreDb db = place.Location.Open())
        {
            await db.Entries.Where(e => e.Kind == "reading")
                .ExecuteUpdateAsync(set => set.SetProperty(e => e.Body, "{}"u8.ToArray()), TestContext.Current.CancellationToken);
        }

        ProgramRun run = place.Run(command);
        Assert.Equal((74, string.Empty), (run.Status, run.Output));
        Assert.Contains("is not as it was written", run.Error, StringComparison.Ordinal);
        Assert.Contains("gatewright club verify", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Engine.Sqlite, Engine.Postgres)]
    [InlineData(Engine.Postgres, Engine.Sqlite)]
    public async Task A_backup_comes_back_on_the_other_engine(Engine from, Engine to)
    {
        ClubPlace place = await stores.NewAsync(from);
        place.RecordNew(ExampleFiles.Small);
        await place.JoinAsync("shed", "ash", "keeper");
        string file = Path.Combine(stores.NewFolder(), "backup.zip");
        ClubPlace other = await stores.NewAsync(to);

        Assert.Equal(0, place.Run("club", "backup", file).Status);
        Assert.Equal(0, other.Run("club", "restore", file).Status);
        Assert.Equal(Clubs(place), Clubs(other));
        Assert.Equal(place.Run("check").Output, other.Run("check").Output);
        ProgramRun again = other.Run("club", "restore", file);
        Assert.Equal(74, again.Status);
        Assert.Contains("is not empty, and is left as it is", again.Error, StringComparison.Ordinal);
        Assert.Equal(74, place.Run("club", "backup", file).Status);
    }

    [Theory]
    [InlineData("list")]
    [InlineData("verify")]
    [InlineData("backup", "backup.zip")]
    [InlineData("export", "club.zip")]
    public async Task A_store_that_is_not_there_is_not_made(params string[] command)
    {
        ClubPlace place = await stores.NewAsync();
        ProgramRun run = place.Run(["club", .. command, "--json"]);
        Assert.Equal(74, run.Status);
        using var told = JsonDocument.Parse(run.Output);
        Assert.Equal("gatewright.problems/1", told.RootElement.GetProperty("format").GetString());
        Assert.Contains("There is no store in", run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(place.Name));
    }

    [Fact]
    public async Task Restoring_what_is_not_there_leaves_no_folder_behind()
    {
        ClubPlace place = await stores.NewAsync();
        ProgramRun run = place.Run("club", "restore", "Data/missing.zip");
        Assert.Equal(2, run.Status);
        Assert.Contains("Data/missing.zip: there is no such file.", run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(place.Name));
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("Port=many")]
    public void A_connection_that_makes_no_sense_is_told_of(string connection)
    {
        ProgramRun run = ProgramRun.Of("club", "list", "--database", connection);
        Assert.Equal((74, string.Empty), (run.Status, run.Output));
        Assert.Contains("Write it as \"Host=…;Database=…;Username=…\".", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_store_is_in_one_place() => Assert.StartsWith(
        "--data and --database: a store is in one place",
        ProgramRun.Of("club", "list", "--data", "a", "--database", "Host=b").Error,
        StringComparison.Ordinal);

    private static string Clubs(ClubPlace place)
    {
        using var told = JsonDocument.Parse(place.Run("club", "list", "--json").Output);
        return told.RootElement.GetProperty("clubs").GetRawText();
    }
}
