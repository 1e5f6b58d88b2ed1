using FsCheck.Xunit;
using Gatewright.Journal.Exchange.JobsFiles;

namespace Gatewright.Journal.Tests.Exchange.JobsFiles;

/// <summary>What can be wrong with a file of jobs.</summary>
public sealed class JobsFaultTests
{
    private const string Found = "none, gate-pitch, pin-aft, pin-out, rigger, wrong-seat, sleeve, hull-level or gauge-zero; several at one gate with + between, each once";

    public static TheoryData<string, string, string> Faults => new()
    {
        { "nothing", "", "jobs.csv: nothing in it: expected a header (boat, class, seat, side, checked, gauge, found, date, note) and under it a row for each gate, oar, level or gauge that was checked." },
        { "a column mistyped", "boat,fuond,date\n", "jobs.csv, line 1: missing from the header: found. Add what is missing; the header names each column once, in any order. Is 'fuond' meant for found?" },
        { "a column twice", "boat,found,date,date\n", "jobs.csv, line 1, column date: stands in the header more than once: keep one." },
        { "no finding", Season.Rows("Heron,8+,5,port,,,,2026-05-02,"), $"jobs.csv, line 2, column found: blank: expected what was found, {Found}." },
        { "a finding there is not", Season.Rows("Heron,8+,5,port,,,rust,2026-05-02,"), $"jobs.csv, line 2, column found: 'rust' is nothing that is found: expected {Found}." },
        { "no day", Season.Rows("Heron,8+,5,port,,,none,,"), "jobs.csv, line 2, column date: blank: expected the day, such as 2026-05-02: a job that is told again is known by it." },
        { "a day that two people read differently", Season.Rows("Heron,8+,5,port,,,none,02/05/2026,"), "jobs.csv, line 2, column date: '02/05/2026' is not a day: expected year, month and day, such as 2026-05-02, or day, month and year with dots, such as 2.5.2026." },
        { "nothing found in nobody knows what", Season.Rows("Heron,8+,,,,,none,2026-05-02,"), "jobs.csv, line 2, column checked: blank: expected what nothing was found in, gate, oar, level or gauge; blank is gate where there is a seat." },
        { "something else checked", Season.Rows("Heron,8+,5,port,hull,,none,2026-05-02,"), "jobs.csv, line 2, column checked: 'hull' is nothing that is checked: expected gate, oar, level or gauge; blank is what the cause is found in." },
        { "a sleeve at a gate", Season.Rows("Heron,8+,5,port,gate,,sleeve,2026-05-02,"), "jobs.csv, line 2, column found: 'sleeve' goes with oar, and what was checked is gate: correct one of the two." },
        { "no boat", Season.Rows(",8+,5,port,,,none,2026-05-02,"), "jobs.csv, line 2, column boat: blank: expected the boat's name." },
        { "no class", Season.Rows("Heron,,5,port,,,none,2026-05-02,"), "jobs.csv, line 2, column class: blank: expected one of 1x 2x 2- 2+ 4x 4x+ 4- 4+ 8+ 8x+." },
        { "no seat of a gate", Season.Rows("Heron,8+,,port,,,rigger,2026-05-02,"), "jobs.csv, line 2, column seat: blank: expected the seat's number, 1 at the bow." },
        { "a seat beyond the boat", Season.Rows("Heron,2x,3,port,,,none,2026-05-02,"), "jobs.csv, line 2, column seat: '3' is not a seat of 2x: expected a whole number from 1 (bow) to 2." },
        { "no side", Season.Rows("Heron,8+,5,,,,none,2026-05-02,"), "jobs.csv, line 2, column side: blank: expected port or starboard." },
        { "a side there is not", Season.Rows("Heron,8+,5,left,,,none,2026-05-02,"), "jobs.csv, line 2, column side: 'left' is not a side: expected port or starboard, as one sees them facing the bow." },
        { "a level with a seat", Season.Rows("Heron,8+,5,,,,hull-level,2026-05-02,"), "jobs.csv, line 2, column seat: '5' does not go with a level, which is of no one gate: leave it blank." },
        { "a gauge with a side", Season.Rows(",,,port,gauge,,none,2026-05-02,"), "jobs.csv, line 2, column side: 'port' does not go with a gauge, which is of no one gate: leave it blank." },
        { "two findings in one gate on one day", Season.Rows("Heron,8+,5,port,,,none,2026-05-02,", "heron,8+,5,port,,,rigger,2026-05-02,"), "jobs.csv, line 3, column found: 'rigger' disagrees with none in line 2, for the same gate on the same day: correct the wrong one." },
        {
            "everything at once",
            Season.Rows(",2x,3,left,,,rust,May,", "Heron,8+,5,port,,,none,2026-05-02,", ",,,,level,,pin-aft,,"),
            Csv.Messages(
                $"jobs.csv, line 2, column found: 'rust' is nothing that is found: expected {Found}.",
                "jobs.csv, line 2, column date: 'May' is not a day: expected year, month and day, such as 2026-05-02, or day, month and year with dots, such as 2.5.2026.",
                "jobs.csv, line 2, column boat: blank: expected the boat's name.",
                "jobs.csv, line 2, column seat: '3' is not a seat of 2x: expected a whole number from 1 (bow) to 2.",
                "jobs.csv, line 2, column side: 'left' is not a side: expected port or starboard, as one sees them facing the bow.",
                "jobs.csv, line 4, column date: blank: expected the day, such as 2026-05-02: a job that is told again is known by it.",
                "jobs.csv, line 4, column boat: blank: expected the boat's name.",
                "jobs.csv, line 4, column found: 'pin-aft' goes with gate, and what was checked is level: correct one of the two.")
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(20, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_is_one_message_with_its_remedy(string fault, string file, string expected)
    {
        Assert.NotEmpty(fault);
        Assert.Equal(expected, Season.ErrorsOf(file));
    }

    [Fact]
    public void What_disagrees_with_the_record_is_an_error()
    {
        JobsInput known = Season.Read(Season.Rows("Heron,8+,5,port,,,none,2026-05-02,"));
        JobsInput input = Season.Onto(known.Jobs, Season.Rows("Heron,8+,5,port,,,rigger,2026-05-02,", "Heron,8+,6,port,,,none,2026-05-02,"));
        Assert.Equal(
            "jobs.csv, line 2, column found: 'rigger' disagrees with the record, which has none for the same gate on that day: correct the row, or take that job out of the file of chances.",
            Assert.Single(input.Errors).ToString());
        Assert.Same(known.Jobs, input.Jobs);
        Assert.Equal(0, input.Added);
    }

    [Property(MaxTest = 2_000)]
    public void Whatever_a_file_holds_it_gives_jobs_or_errors_and_never_both(int seed)
    {
        var random = new Random(seed);
        char[] text = Season.Rows("Heron,8+,5,port,,,pin-out,2026-05-02,", "Heron,8+,6,port,oar,,none,2026-05-02,\"a; b\"", ",,,,gauge,G1,none,2026-05-03,").ToCharArray();
        for (int i = random.Next(1, 6); i > 0; i--)
        {
            text[random.Next(text.Length)] = ",;\"\n 0-x\u0001"[random.Next(9)];
        }

        JobsInput input = Season.Read(new string(text));
        Assert.True(input.Errors.Count == 0 || input.Jobs.Count == 0);
        Assert.Equal(input.Jobs.Count, input.Added);
    }
}
