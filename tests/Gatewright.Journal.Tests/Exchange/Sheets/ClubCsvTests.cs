using System.Text;
using FsCheck.Xunit;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Sheets;
using Gatewright.Journal.Exchange.StoresFiles;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Exchange.Recording;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Exchange.Sheets;

public sealed class ClubCsvTests
{
    private const string Page = "club-tables.md";

    [Property(Arbitrary = [typeof(AnyShed)], MaxTest = 40)]
    public void The_table_of_readings_gives_every_boat_the_clubs_verdict(AShed shed, int seed)
    {
        Club club = ReadingsRecordingTests.Record(Club.Empty(Journals.Club), ReadingsRecordingTests.Told(shed, new Random(seed)));
        if (!Records(club).Any(r => r.Current.Readings.Count > 0))
        {
            // Nothing of it can be recorded: a table with no rows is none to read.
            return;
        }

        ReadingsInput read = Csv.Read(Written("readings.csv", club));
        Assert.Equal("", string.Join("; ", read.Errors));
        Dictionary<string, BoatRecord> boats = read.Records.ToDictionary(b => b.Current.Boat);
        foreach (BoatRecord expected in Records(club).Where(r => r.Current.Readings.Count > 0))
        {
            BoatRecord actual = boats[expected.Current.Boat];
            Assert.Equal(expected.Current.Readings.Count, actual.Current.Readings.Count);
            Assert.Equal(Verdict(expected), Verdict(actual));
        }
    }

    [Fact]
    public void The_example_shed_keeps_its_verdicts_through_the_club_and_its_table()
    {
        Club club = ReadingsRecordingTests.Record(Club.Empty(Journals.Club), Examples.Read("shed.csv"));
        ReadingsInput read = Csv.Read(Written("readings.csv", club));
        Dictionary<string, string> expected = Examples.Verdicts();
        Assert.Equal(26, read.Records.Count);
        Assert.All(read.Records, boat => Assert.Equal(expected[boat.Current.Boat], Verdict(boat)));
    }

    [Fact]
    public void Two_boats_of_one_name_are_told_apart_by_their_keys()
    {
        Club club = Club.Empty(Journals.Club);
        foreach (string key in (string[])["a", "b"])
        {
            club = club.With(Journals.Entry(key[0], new ThingSet(Things.Boat, key, new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }), 10));
            club = club.With(Journals.Entry(key[0] + 10, new BoatLaid("l" + key, key, Core.Lie.Upright, LevelBasis.ByEye), 20));
            club = club.With(Journals.Entry(key[0] + 20, new ReadingTaken("l" + key, key, ReadItem.Gate, 1, Core.Side.Port, 4), 30));
        }

        Assert.Equal(["Teal (a)", "Teal (b)"], Csv.BoatsOf(Written("readings.csv", club)).Select(b => b.Boat));
    }

    [Fact]
    public void A_reading_of_the_morning_of_a_knock_is_left_out_since_a_file_has_only_days()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(1, new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["class"] = "1x" }), 10),
            Journals.Entry(2, new BoatLaid("l1", "teal", Core.Lie.Upright, LevelBasis.ByEye), 20),
            Journals.Entry(3, new ReadingTaken("l1", "teal", ReadItem.Gate, 1, Core.Side.Port, 4), 30),
            Journals.Entry(4, new Reported("teal", Core.Diagnosing.ReportKind.Knock, 1, Core.Side.Port), 40),
            Journals.Entry(5, new ReadingTaken("l1", "teal", ReadItem.Gate, 1, Core.Side.Port, 5), 50),
        ]);
        Assert.Equal(5, Assert.Single(Assert.Single(Csv.BoatsOf(Written("readings.csv", club))).Readings).Value.Degrees);
    }

    [Fact]
    public void Stores_read_back_and_a_shelf_below_nothing_is_bare()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(1, new StockCounted("insert", 4, 7), 10),
            Journals.Entry(2, new StockChanged("shim", 0.5m, -2), 20),
            Journals.Entry(3, new StockCounted("pin", 0, 1), 30),
        ]);
        string text = Written("stores.csv", club);
        Assert.Equal("part,size,count,note\ninsert,4,7,\npin,0,1,\nshim,0.5,0,2 more went out than came in: count the shelf\n", text);
        StoresInput read = StoresCsv.Read("stores.csv", new MemoryStream(Encoding.UTF8.GetBytes(text)));
        Assert.Empty(read.Errors);
        Assert.Equal(["insert 4°: 7", "shim 0.5 mm: 0", "pin: 1"], read.Stores.Parts.Select(p => FormattableString.Invariant($"{p.Part}: {p.Count}")));
    }

    [Fact]
    public void Words_that_begin_as_formulas_run_nowhere()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(1, Journals.Set("heron", "name", "=1+1"), 10),
            Journals.Entry(2, new Noted("boat", "heron", "  @SUM(A1)"), 20),
            Journals.Entry(3, new Reported("heron", Core.Diagnosing.ReportKind.Knock, 1, Core.Side.Port, "-2+3, \"twice\""), 30),
            Journals.Entry(4, new JobPlanned("j1", "heron", Core.Diagnosing.Cause.PinAft, "+x", ["=a"], [], []), 40),
        ]);
        foreach (ClubTable table in ClubCsv.Tables)
        {
            Assert.DoesNotContain(Cells(Written(table.File, club)), cell => cell.TrimStart() is ['=' or '+' or '@', ..] || (cell is ['-', ..] && !double.TryParse(cell, out _)));
        }

        Assert.Contains("\"'-2+3, \"\"twice\"\"\"", Written("reports.csv", club), StringComparison.Ordinal);
    }

    [Property(MaxTest = 500)]
    public bool Words_come_back_from_their_shield(string? text, int beginning)
    {
        string words = ((string[])["", "=", "'=", "''-", " @", "'", "\t+"])[Math.Abs(beginning % 7)] + text;
        string cell = SheetText.Shielded(words);
        return SheetText.Plain(cell) == words && cell.TrimStart() is not ['=' or '+' or '-' or '@', ..];
    }

    [Fact]
    public void The_page_has_the_tables_and_their_columns()
    {
        MarkdownTable page = MarkdownTable.Of(Page, "table");
        Assert.Equal(ClubCsv.Tables.Select(t => t.File), page.Codes("table").Select(c => Assert.Single(c)));
        Assert.Equal(
            ClubCsv.Tables.Select(t => Written(t.File, Club.Empty(Journals.Club)).Split('\n')[0]),
            page.Codes("columns").Select(c => string.Join(',', c)));
    }

    private static string Written(string file, Club club)
    {
        using var text = new StringWriter();
        ClubCsv.Tables.Single(t => t.File == file).Write(club, text);
        return text.ToString();
    }

    private static IEnumerable<BoatRecord> Records(Club club) => club.Subjects.Where(s => s.Thing == "boat")
        .Select(s => new BoatView(club, s.Key).Record(MeasuringSettings.Default)!);

    private static string Verdict(BoatRecord boat) => boat.Check(CheckSettings.Default).Verdict.Verdict.Word();

    /// <summary>Cells of a table without line ends in them.</summary>
    private static IEnumerable<string> Cells(string text) => text.Split('\n')
        .SelectMany(line => System.Text.RegularExpressions.Regex.Matches(line, "(?:^|,)(\"(?:[^\"]|\"\")*\"|[^,]*)").Select(m => m.Groups[1].Value.Trim('"')));
}
