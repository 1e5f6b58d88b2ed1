using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Journal.Facts;
using Gatewright.Store;
using Gatewright.Store.Blobs;

namespace Gatewright.Cli.Tests.Clubs;

/// <summary>A club out of one store and into another.</summary>
public sealed class ExportImportTests(ClubStores stores)
{
    private static readonly byte[] Picture = [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A, 1, 2, 3];
    private static readonly string Hash = Convert.ToHexStringLower(SHA256.HashData(Picture));

    [Theory]
    [InlineData(Engine.Sqlite, Engine.Postgres)]
    [InlineData(Engine.Postgres, Engine.Sqlite)]
    public async Task What_comes_out_again_is_the_same_to_the_byte(Engine from, Engine to)
    {
        ClubPlace place = await WithPhotoAsync(from);
        string folder = stores.NewFolder();
        string first = Path.Combine(folder, "first.zip");
        string second = Path.Combine(folder, "second.zip");
        ClubPlace other = await stores.NewAsync(to);

        Assert.Equal(0, place.Run("club", "export", first).Status);
        Assert.Equal(0, other.Run("club", "import", first).Status);
        Assert.Equal(0, other.Run("club", "export", second).Status);
        Assert.Equal(File.ReadAllBytes(first), File.ReadAllBytes(second));
        Assert.Equal(["first.zip", "second.zip"], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order());
        using var zip = ZipFile.OpenRead(first);
        Assert.NotNull(zip.GetEntry($"blobs/{Hash}"));
    }

    [Theory]
    [InlineData(Engine.Sqlite)]
    [InlineData(Engine.Postgres)]
    public async Task Taken_in_twice_it_adds_nothing_and_later_only_what_is_new(Engine engine)
    {
        ClubPlace place = await WithPhotoAsync(Engine.Sqlite);
        ClubPlace other = await stores.NewAsync(engine);
        string folder = stores.NewFolder();
        string file = Path.Combine(folder, "club.zip");
        place.Run("club", "export", file);
        int count = (await place.ClubAsync("shed")).Count;
        Assert.Equal((count, count, 1), Counts(other.Run("club", "import", file, "--json")));
        Assert.Equal((count, 0, 0), Counts(other.Run("club", "import", file, "--json")));
        await place.AppendAsync("shed", new Noted(Things.Boat, "teal", "varnished"), new Noted(Things.Boat, "teal", "dry"));
        place.Run("club", "export", file, "--replace");
        Assert.Equal((count + 2, 2, 0), Counts(other.Run("club", "import", file, "--json")));
        Assert.Equal(0, other.Run("club", "verify").Status);
    }

    [Fact]
    public async Task Nothing_is_written_over_unless_that_is_asked_for()
    {
        ClubPlace place = await WithPhotoAsync(Engine.Sqlite);
        string folder = stores.NewFolder();
        string file = Path.Combine(folder, "club.zip");
        File.WriteAllText(file, "mine");
        File.WriteAllText(Path.Combine(folder, "notes.csv"), "mine");
        ProgramRun zip = place.Run("club", "export", file);
        ProgramRun tables = place.Run("club", "export", "--csv", folder);
        Assert.Equal((2, 2), (zip.Status, tables.Status));
        Assert.Contains("club.zip: is there already, and is left as it is: name another, or add --replace.", zip.Error, StringComparison.Ordinal);
        Assert.Contains("notes.csv: is there already", tables.Error, StringComparison.Ordinal);
        Assert.Equal(["club.zip", "notes.csv"], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order());
        Assert.Equal("mine", File.ReadAllText(file));
        Assert.Equal((0, 0), (place.Run("club", "export", file, "--replace").Status, place.Run("club", "export", "--csv", folder, "--replace").Status));
        Assert.NotEqual("mine", File.ReadAllText(Path.Combine(folder, "notes.csv")));
    }

    [Fact]
    public async Task An_export_that_fails_leaves_nothing_behind()
    {
        ClubPlace place = await WithPhotoAsync(Engine.Sqlite);
        await using (Store.Schema.StoreDb db = place.Location.Open())
        {
            db.Blobs.Single().Bytes = [.. Picture, 4];
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        string folder = stores.NewFolder();
        ProgramRun run = place.Run("club", "export", Path.Combine(folder, "club.zip"));
        Assert.Equal(2, run.Status);
        Assert.Contains("gatewright club verify", run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
        Assert.Equal(2, place.Run("club", "export", Path.Combine(folder, "missing", "club.zip")).Status);
    }

    [Fact]
    public async Task Tables_of_readings_are_judged_as_the_club_is()
    {
        ClubPlace place = await stores.NewAsync();
        place.RecordNew(ExampleFiles.Shed);
        string folder = Path.Combine(stores.NewFolder(), "tables");
        Assert.Equal(0, place.Run("club", "export", "--csv", folder).Status);
        Assert.Equal(
            Good(place.Run("check", "--plain")), Good(ProgramRun.Of("check", Path.Combine(folder, "readings.csv"), "--plain")));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Of_a_broken_file_nothing_is_taken_unless_that_is_asked_for(bool anyway)
    {
        ClubPlace place = await WithPhotoAsync(Engine.Sqlite);
        string file = Path.Combine(stores.NewFolder(), "club.zip");
        place.Run("club", "export", file);
        string[] lines = [];
        using (ZipArchive zip = ZipFile.Open(file, ZipArchiveMode.Update))
        {
            ZipArchiveEntry entries = zip.GetEntry("entries.jsonl")!;
            using (var reader = new StreamReader(entries.Open()))
            {
                lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
            }

            entries.Delete();
            using var writer = new StreamWriter(zip.CreateEntry("entries.jsonl").Open());
            lines[2] = "{";
            writer.Write(string.Join('\n', lines) + "\n");
        }

        ClubPlace other = await stores.NewAsync();
        ProgramRun run = other.Run(["club", "import", file, .. anyway ? ["--anyway"] : Array.Empty<string>()]);
        string told = anyway ? run.Output.Replace("\n  ", " ", StringComparison.Ordinal) : run.Error;
        Assert.Equal(anyway ? 1 : 2, run.Status);
        Assert.Contains("entries.jsonl, line 3", told, StringComparison.Ordinal);
        Assert.Contains("is not what was written", told, StringComparison.Ordinal);
        Assert.Equal(anyway, Path.Exists(other.Name));
        if (anyway)
        {
            Assert.Equal(lines.Length - 1, (await other.ClubAsync("shed")).Count);
        }
    }

    [Fact]
    public async Task What_is_no_club_s_file_is_told_of()
    {
        ClubPlace place = await stores.NewAsync();
        ProgramRun run = place.Run("club", "import", ExampleFiles.Shed, "--anyway");
        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.Contains("This is not a club's file", run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(place.Name));
    }

    private static (int Entries, int New, int NewPhotos) Counts(ProgramRun run)
    {
        using var told = JsonDocument.Parse(run.Output);
        return (
            told.RootElement.GetProperty("entries").GetInt32(),
            told.RootElement.GetProperty("newEntries").GetInt32(),
            told.RootElement.GetProperty("newPhotos").GetInt32());
    }

    private static IEnumerable<string> Good(ProgramRun run) =>
        run.Lines.Where(line => line.StartsWith("Boat ", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    private async Task<ClubPlace> WithPhotoAsync(Engine engine)
    {
        ClubPlace place = await stores.NewAsync(engine);
        place.RecordNew(ExampleFiles.Small);
        await new BlobStore(place.Location).PutAsync("shed", Hash, Picture, TestContext.Current.CancellationToken);
        await place.AppendAsync("shed", new PhotoTaken(Things.Boat, "teal", Hash, Picture.Length, "image/png"));
        return place;
    }
}
