using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Exchange.JobsFiles;

namespace Gatewright.Journal.Tests.Exchange.JobsFiles;

public sealed class JobsReadingTests
{
    private const string PinOut = "gate Heron 8+ seat 5 starboard 2026-05-02 pin-out";

    [Fact]
    public void What_was_checked_is_as_stated_or_as_the_finding_and_the_seat_tell() => Assert.Equal(
        [
            PinOut,
            "gate Heron 8+ seat 6 port 2026-05-02 none",
            "oar Heron 8+ seat 6 port 2026-05-02 none",
            "oar Heron 8+ seat 7 starboard 2026-05-02 sleeve",
            "level Osprey 2026-05-02 hull-level",
            "gauge G1 2026-05-03 none",
            "gauge gauge 2026-05-03 gauge-zero",
            "level Heron 2026-05-03 none",
        ],
        Season.JobsOf(Season.Rows(
            "Heron,8+,5,starboard,,,pin-out,2026-05-02,bent on the stage",
            "Heron,8+,6,port,,,none,2026-05-02,",
            "Heron,8+,6,port,oar,,none,2026-05-02,",
            "Heron,8+,7,starboard,,,sleeve,2026-05-02,",
            "Osprey,,,,,,hull-level,2026-05-02,",
            "Heron,,,,level,,none,2026-05-03,",
            ",,,,gauge,G1,none,2026-05-03,",
            ",,,,,,gauge-zero,2026-05-03,")));

    [Theory]
    [InlineData("pin-aft + gate-pitch")]
    [InlineData("gate-pitch+Pin Aft")]
    public void Several_causes_at_one_gate_stand_in_one_row(string found) => Assert.Equal(
        ["gate Heron 8+ seat 5 starboard 2026-05-02 gate-pitch + pin-aft"],
        Season.JobsOf(Season.Rows($"Heron,8+,5,starboard,,,{found},2026-05-02,")));

    [Theory]
    [InlineData("pin-aft + pin-aft", "is nothing that is found: expected none, gate-pitch")]
    [InlineData("pin-aft + none", "several at one gate with + between, each once.")]
    [InlineData("pin-aft +", "is nothing that is found")]
    [InlineData("pin-aft + sleeve", "goes with oar, and what was checked is gate: correct one of the two.")]
    public void What_cannot_be_found_together_is_an_error(string found, string said) =>
        Assert.Contains(said, Season.ErrorsOf(Season.Rows($"Heron,8+,5,starboard,,,{found},2026-05-02,")), StringComparison.Ordinal);

    [Fact]
    public void Two_rows_of_one_gate_and_day_disagree_and_are_not_two_causes() => Assert.Contains(
        "disagrees with pin-aft",
        Season.ErrorsOf(Season.Rows("Heron,8+,5,starboard,,,pin-aft,2026-05-02,", "Heron,8+,5,starboard,,,gate-pitch,2026-05-02,")),
        StringComparison.Ordinal);

    // What spreadsheets and people do to such a table; the same list as for readings and stores.
    [Theory]
    [InlineData("date;found;side;seat;class;boat\n2.5.2026;Pin Out;Starboard;5,0;8+;Heron\n")]
    [InlineData("boat\tclass\tseat\tside\tfound\tdate\nHeron\t8+\t5\tstarboard\tpin_out\t2026-05-02\n")]
    [InlineData("\uFEFFBOAT, Class ,Seat,Side,Found,Date\n\nHeron,8 +,5,starboard,pin-out,2026–05–02\n,,,,,\n")]
    public void What_spreadsheets_and_people_do_is_taken_as_meant(string text) => Assert.Equal([PinOut], Season.JobsOf(text));

    [Fact]
    public void The_same_file_learnt_again_changes_nothing_and_one_that_has_grown_adds_what_is_new()
    {
        string file = Season.Rows("Heron,8+,5,starboard,,,pin-out,2026-05-02,", "Heron,8+,6,port,,,none,2026-05-02,");
        JobsInput first = Season.Read(file);
        JobsInput again = Season.Onto(first.Jobs, file);
        JobsInput grown = Season.Onto(first.Jobs, file + "HERON,8+,6,port,,,none,2026-06-02,\n");

        Assert.Equal((2, 0), (first.Added, first.Again));
        Assert.Equal((0, 2), (again.Added, again.Again));
        Assert.Equal(first.Jobs.Jobs, again.Jobs.Jobs);
        Assert.Equal((1, 2), (grown.Added, grown.Again));
        Assert.Equal(new FoundCauses { GatesChecked = 3, PinOut = 1 }, grown.Jobs.Found);
    }

    [Fact]
    public void A_row_that_stands_twice_counts_once_with_a_warning()
    {
        JobsInput input = Season.Read(Season.Rows("Heron,,,,level,,none,2026-05-02,"), Season.Rows("heron,,,,level,,none,2026-05-02,"));
        Assert.Equal((1, 1, 1), (input.Jobs.Count, input.Added, input.Again));
        Assert.Equal("jobs-2.csv, line 2, column boat: 'heron' has a row that stands in jobs-1.csv, line 2 too: the job is counted once.", Assert.Single(input.Warnings).ToString());
    }

    [Fact]
    public void The_example_file_reads_without_an_error_or_a_warning()
    {
        JobsInput input = Season.Read(File.ReadAllText(Path.Combine(Repository.Folder("examples"), "jobs.csv")));
        Assert.Empty(input.Errors.Concat(input.Warnings));
        Assert.Equal(input.Added, input.Jobs.Count);
        Assert.True(input.Jobs.Found.GatesChecked > 100);
    }

    [Fact]
    public void The_example_of_the_page_reads_without_an_error_or_a_warning()
    {
        JobsInput input = Season.Read(Assert.Single(MarkdownTable.Blocks("chances.md", "csv")));
        Assert.Empty(input.Errors.Concat(input.Warnings));
        Assert.Equal(new FoundCauses { GatesChecked = 2, PinOut = 1, OarsChecked = 1, BoatsChecked = 2, HullLevel = 1, GaugesChecked = 1 }, input.Jobs.Found);
    }

    [Fact]
    public void The_page_has_the_columns_and_their_words()
    {
        MarkdownTable table = MarkdownTable.Of("chances.md", "column");
        Assert.Equal(JobsFormat.Columns.Select(c => c.Name), table.Codes("column").Select(c => Assert.Single(c)));
        Assert.Equal(JobsFormat.Columns.Select(c => string.Join(' ', c.Words)), table.Codes("values").Select(words => string.Join(' ', words)));
    }
}
