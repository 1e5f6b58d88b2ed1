using System.Text;
using System.Text.Json;
using Gatewright.Cli.Print;
using Gatewright.Cli.Tests.Clubs;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Words;

namespace Gatewright.Cli.Tests.Print;

/// <summary>What is printed from the terminal. What stands on the pages is tested where they are made.</summary>
public sealed class PrintTests(ClubStores stores)
{
    public static TheoryData<string> Documents => ["sheet", "card", "shed", "job", "round", "labels"];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Each_document_is_made_of_a_file(string document)
    {
        string file = Path.Combine(stores.NewFolder(), "out.pdf");
        ProgramRun run = ProgramRun.Of("print", document, ExampleFiles.Small, "-o", file, "--plain");

        Assert.Equal((0, string.Empty), (run.Status, run.Error));
        Assert.EndsWith($" in {file}.\n", run.Output, StringComparison.Ordinal);
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(File.ReadAllBytes(file), 0, 5));
    }

    [Fact]
    public void What_is_there_already_is_left_as_it_is_unless_it_is_to_be_replaced()
    {
        string file = Path.Combine(stores.NewFolder(), "out.pdf");
        File.WriteAllText(file, "mine");
        ProgramRun refused = ProgramRun.Of("print", "shed", ExampleFiles.Small, "-o", file);
        Assert.Equal((2, string.Empty), (refused.Status, refused.Output));
        Assert.Contains("is there already, and is left as it is: name another, or add --replace.", refused.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(file));

        Assert.Equal(0, ProgramRun.Of("print", "shed", ExampleFiles.Small, "-o", file, "--replace").Status);
        Assert.NotEqual("mine", File.ReadAllText(file));
    }

    /// <summary>Gates of 3° are at the club's limit of 3 and under the race's of 3.5.</summary>
    [Theory]
    [InlineData(null, "club", Verdict.Good)]
    [InlineData("race", "race", Verdict.Adjust)]
    public async Task The_shed_is_judged_by_the_standard_asked_for(string? standard, string name, Verdict verdict)
    {
        using var readings = new TemporaryFile([
            "boat,class,seat,side,at,reading,bow_high,port_low",
            .. from seat in (int[])[1, 2] from at in (string[])["catch", "abeam", "finish"] select $"Teal,2-,{seat},{(seat == 1 ? "starboard" : "port")},{at},3,0,0"]);
        PrintRequest request = new([readings.Path], null, [], "out.pdf", false, Language.English) { Standard = standard };

        PrintedShed shed = (await PrintSource.OpenAsync(
            request, new(Stream.Null, false, TextWriter.Null, TextWriter.Null, default, null), DateTimeOffset.UnixEpoch, [], TestContext.Current.CancellationToken))!;

        BoatVerdict judged = shed.Boats.Single().Check!.Verdict;
        Assert.Equal((name, verdict), (judged.Standard.Name, judged.Verdict));
    }

    [Fact]
    public void A_standard_that_is_none_is_told_of()
    {
        ProgramRun run = ProgramRun.Of("print", "sheet", ExampleFiles.Small, "--standard", "regatta", "-o", Path.Combine(stores.NewFolder(), "out.pdf"));

        Assert.Equal(2, run.Status);
        Assert.Contains("--standard: 'regatta' is neither a standard (club, race) nor a file.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_wrong_files_everything_is_told_and_nothing_printed()
    {
        string file = Path.Combine(stores.NewFolder(), "out.pdf");
        ProgramRun run = ProgramRun.Of("print", "sheet", ExampleFiles.Wrong, "Data/missing.csv", "-o", file);
        Assert.Equal((2, string.Empty), (run.Status, run.Output));
        Assert.Contains("Data/wrong.csv, line", run.Error, StringComparison.Ordinal);
        Assert.Contains("Data/missing.csv: there is no such file.", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("Nothing was printed.\n", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public void A_boat_that_is_not_there_a_format_too_small_and_no_file_are_told_of()
    {
        string file = Path.Combine(stores.NewFolder(), "out.pdf");
        ProgramRun boat = ProgramRun.Of("print", "sheet", ExampleFiles.Small, "--boat", "Nobody", "-o", file);
        Assert.Equal(2, boat.Status);
        Assert.Contains("--boat: 'Nobody' is none of the boats of this shed:", boat.Error, StringComparison.Ordinal);

        ProgramRun label = ProgramRun.Of(
            "print", "labels", ExampleFiles.Small, "--format", "38x21", "--address", "https://" + new string('a', 120) + ".example", "-o", file);
        Assert.Equal(2, label.Status);
        Assert.Contains("--format: '38x21' the longest code needs a square of", label.Error, StringComparison.Ordinal);

        ProgramRun job = ProgramRun.Of("print", "job", ExampleFiles.Small, "--job", "none", "-o", file);
        Assert.Contains("--job: 'none' is no job of this club: it has none that is open.", job.Error, StringComparison.Ordinal);

        ProgramRun nothing = ProgramRun.Of("print", "sheet", ExampleFiles.Small);
        Assert.Equal(2, nothing.Status);
        Assert.Contains("--output", nothing.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public async Task A_club_is_printed_with_its_jobs()
    {
        ClubPlace place = await stores.NewAsync();
        place.RecordNew(ExampleFiles.Small);
        string boat = (await place.ClubAsync("shed")).Subjects.First(s => s.Thing == Things.Boat && s.Key.Length > 0).Key;
        await place.AppendAsync("shed", new JobPlanned("job-1", boat, Cause.GatePitch, "insert-swap", ["Fit an insert of 4."], [], [], 1, Side.Port));
        string file = Path.Combine(stores.NewFolder(), "out.pdf");

        using var told = JsonDocument.Parse(place.Run("print", "job", "-o", file, "--json").Output);

        Assert.Equal("gatewright.printed/1", told.RootElement.GetProperty("format").GetString());
        Assert.Equal(("job", 1), (told.RootElement.GetProperty("document").GetString(), told.RootElement.GetProperty("count").GetInt32()));
        Assert.True(File.Exists(file));
    }

    /// <summary>The way of a day without a phone: the table is printed, readings typed in, and recorded in the club it came from.</summary>
    [Fact]
    public async Task The_table_of_a_round_goes_back_into_the_club()
    {
        ClubPlace place = await stores.NewAsync();
        place.RecordNew(ExampleFiles.Small);
        int before = (await place.ClubAsync("shed")).Count;
        string file = Path.Combine(stores.NewFolder(), "round.csv");
        Assert.Equal(0, place.Run("print", "round", "--csv", "--stations", "abeam", "-o", file).Status);

        string[] rows = await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken);
        Assert.All(rows.Skip(1), row => Assert.Contains(",abeam,,", row, StringComparison.Ordinal));
        await File.WriteAllLinesAsync(
            file, [rows[0], .. rows.Skip(1).Select(row => row.Replace(",abeam,,", ",abeam,4.5,", StringComparison.Ordinal))], TestContext.Current.CancellationToken);
        ProgramRun recorded = place.Run("record", file, "--member", "kim", "--plain");

        Assert.Equal((0, string.Empty), (recorded.Status, recorded.Error));
        Assert.Contains($"{rows.Length - 1} readings", recorded.Output, StringComparison.Ordinal);
        Assert.True((await place.ClubAsync("shed")).Count > before);
    }
}
