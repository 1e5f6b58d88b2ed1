using System.Text;
using Gatewright.Core.Oars;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange.OarsFiles;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Exchange.Sheets;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Exchange.OarsFiles;

/// <summary>Oars as CSV: docs/oars.md says what the program reads.</summary>
public sealed class OarsCsvTests
{
    private const string Page = "oars.md";
    private static readonly MarkdownTable s_columns = MarkdownTable.Of(Page, "column");

    public static TheoryData<string, string> Faults => new()
    {
        { ",1", "oars.csv, line 2, column oar: blank: expected what the oar is called." },
        { "A,45", "oars.csv, line 2, column sleeve: '45' is no sleeve of an oar: expected degrees from -20 to 20." },
        { "A,,376 mm", "oars.csv, line 2, column length: '376 mm' is no length of an oar: expected centimetres from 100 to 450." },
        { "A,,,left", "oars.csv, line 2, column side: 'left' is not understood: expected port or starboard." },
        { "A,,,,3", "oars.csv, line 2, column seat: '3' names a seat of no boat: name the boat too, or leave the seat blank." },
        { "A,,,,9,Heron", "oars.csv, line 2, column seat: '9' is no seat: expected a number from 1, the bow, to 8." },
        { "A,,,,,,steep", "oars.csv, line 2, column bow_high: 'steep' is no level: expected degrees the bow lies high, at most 10 either way, bubble or eye." },
        { "A,,,,,,,May 4", "oars.csv, line 2, column date: 'May 4' is no day: expected one such as 2026-05-04 or 4.5.2026." },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void What_is_wrong_is_said_with_its_place(string row, string problem)
    {
        OarsInput input = Read("oar,sleeve,length,side,seat,boat,bow_high,date\n" + row + "\n");

        Assert.Equal([problem], input.Errors.Select(e => e.ToString()));
        Assert.Empty(input.Rows);
    }

    [Fact]
    public void The_table_has_the_columns_and_their_words()
    {
        Assert.Equal(OarsFormat.Columns.Select(c => c.Name), s_columns.Codes("column").Select(c => Assert.Single(c)));
        Assert.Equal(OarsFormat.Columns.Select(c => string.Join(' ', c.Words)), s_columns.Codes("values").Select(words => string.Join(' ', words)));
        foreach ((string column, OarItem item, string unit) in ((string, OarItem, string)[])[("length", OarItem.Length, "centimetres"), ("inboard", OarItem.Inboard, "centimetres"), ("weight", OarItem.Weight, "kilograms"), ("sleeve", OarItem.Sleeve, "degrees")])
        {
            int at = OarsFormat.Columns.ToList().FindIndex(c => c.Name == column);
            Assert.Equal(FormattableString.Invariant($"{unit} from {item.Plausible().Least} to {item.Plausible().Most}"), s_columns["values"].ElementAt(at));
        }
    }

    [Fact]
    public void The_examples_read_without_an_error_or_a_warning()
    {
        OarsInput page = OarsCsv.Read("oars.md", new MemoryStream(Encoding.UTF8.GetBytes(Assert.Single(MarkdownTable.Blocks(Page, "csv")))));
        OarsInput file = Example();

        Assert.Empty(page.Errors.Concat(page.Warnings).Concat(file.Errors).Concat(file.Warnings));
        Assert.Equal((3, 19), (page.Rows.Count, file.Rows.Count));
    }

    /// <summary>Invented for the demo: of the eight's set the fifth sleeve has slipped and the seventh collar has moved.</summary>
    [Fact]
    public void The_example_tells_what_is_wrong_with_it()
    {
        OarsView view = new(Record(Club.Empty(Journals.Club), Example()));

        Assert.Equal(["Alluvium", "Drumlin", "Esker", "Tarn"], view.Sets.Select(s => s.Title));
        Assert.Equal(["Alluvium 5 sleeve", "Alluvium 7 inboard"], Wrong(view.Sets[0]));
        Assert.Empty(Wrong(view.Sets[1]));
        Assert.Equal(["Esker 1 sleeve", "Esker 2 sleeve", "Esker 1 length", "Esker 2 length"], Wrong(view.Sets[2]));
        Assert.Null(view.Sets[3].Verdict);
        Assert.Equal(8, view.InBoat("hornbeam").Count);
    }

    [Fact]
    public void Recorded_again_it_adds_nothing()
    {
        Club club = Record(Club.Empty(Journals.Club), Example());

        Assert.Empty(Entries(club, Example()));
        Assert.All(club.All(), r => Assert.Empty(EntryRules.Problems(r.Entry)));
    }

    [Fact]
    public void Written_and_read_again_the_oars_are_judged_alike()
    {
        Club club = Record(Club.Empty(Journals.Club), Example());
        using var text = new StringWriter { NewLine = "\n" };
        ClubCsv.Tables.Single(t => t.File == "oars.csv").Write(club, text);
        OarsInput input = Read(text.ToString());

        Assert.Empty(input.Errors);
        OarsView one = new(club);
        OarsView other = new(Record(Club.Empty(Journals.Club), input));
        Assert.Equal(one.Sets.SelectMany(Wrong), other.Sets.SelectMany(Wrong));
        Assert.Equal(one.All.Select(Told), other.All.Select(Told));
    }

    [Fact]
    public void One_name_in_two_sets_is_two_oars()
    {
        OarsView view = new(Record(Club.Empty(Journals.Club), Read("oar,set,length\n1,Red,376\n1,Blue,374\n1,Red,377\n")));

        Assert.Equal([("Blue", 1), ("Red", 1)], view.Sets.Select(s => (s.Title, s.Oars.Count)));
    }

    private static string Told(OarView oar) => FormattableString.Invariant(
        $"{oar.Name} {oar.Boat} {oar.Seat} {oar.Side} {oar.Blade} {oar.Oar.Sleeve?.Value:0.###} {oar.Oar.Sleeve?.U:0.###} {oar.Oar.Length?.Value} {oar.Oar.Inboard?.Value} {oar.Oar.Weight?.Value}");

    private static IEnumerable<string> Wrong(OarSetView set) => set.Judged
        .SelectMany(j => j.Oars.Where(o => o.Verdict != Core.Judging.Verdict.Good).Select(o => $"{o.Oar.Name} {j.Item.Word()}"));

    private static OarsInput Example() =>
        OarsCsv.Read("oars.csv", new MemoryStream(File.ReadAllBytes(Path.Combine(Repository.Folder("examples"), "oars.csv"))));

    private static OarsInput Read(string text) => OarsCsv.Read("oars.csv", new MemoryStream(Encoding.UTF8.GetBytes(text)));

    private static Club Record(Club club, OarsInput input) => club.With(Entries(club, input).Select(Recorded.Of));

    private static IReadOnlyList<Entry> Entries(Club club, OarsInput input)
    {
        var now = new DateTimeOffset(2026, 11, 1, 12, 0, 0, TimeSpan.Zero);
        int made = 0;
        return OarsRecording.Entries(input, club, new("m1", "desk", new HybridClock().Seen(club.Last), now, () => Journals.Id(1000 + club.Count + made++))).Entries;
    }
}
