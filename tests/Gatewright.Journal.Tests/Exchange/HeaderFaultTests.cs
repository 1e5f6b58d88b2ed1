namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What can be wrong with the line that names the columns.</summary>
public sealed class HeaderFaultTests
{
    public static TheoryData<string, string, string> Faults => new()
    {
        {
            "no header",
            Csv.Lines("Kestrel,4-,1,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 1: 'Kestrel' is not the name of a column, nor is anything else in this line: expected a header (boat, class, seat, side, item, at, reading, ...), its names separated by commas, semicolons or tabs."
        },
        {
            "columns that are missing",
            Csv.Lines(
                "boat,class,reading",
                "Kestrel,4-,4.5"),
            "round.csv, line 1: missing from the header: seat, side, at. Add what is missing; the header names each column once, in any order."
        },
        {
            "a column that is missing where all are gates",
            Csv.Lines(
                "boat,class,seat,side,reading",
                "Kestrel,4-,1,port,4.5"),
            "round.csv, line 1: missing from the header: at. Add what is missing; the header names each column once, in any order."
        },
        {
            "a name mistyped",
            Csv.Lines(
                "boat,class,seat,side,item,at,raeding",
                "Kestrel,4-,1,port,gate,catch,4.5"),
            "round.csv, line 1: missing from the header: reading. Add what is missing; the header names each column once, in any order. Is 'raeding' meant for reading?"
        },
        {
            "a column twice",
            Csv.Lines(
                "boat,class,seat,side,item,at,reading,Bow High,bow_high",
                "Kestrel,4-,1,port,gate,catch,4.5,,"),
            "round.csv, line 1, column bow_high: stands in the header more than once: keep one."
        },
        {
            "a column twice and another missing",
            Csv.Lines(
                "boat,class,seat,seat,item,at,reading",
                "Kestrel,4-,1,1,gate,catch,4.5"),
            Csv.Messages(
                "round.csv, line 1, column seat: stands in the header more than once: keep one.",
                "round.csv, line 1: missing from the header: side. Add what is missing; the header names each column once, in any order.")
        },
        {
            "another separator",
            Csv.Lines(
                "boat|class|seat|side|item|at|reading",
                "Kestrel|4-|1|port|gate|catch|4.5"),
            "round.csv, line 1: 'boat|class|seat|side|item|at|reading' is not the name of a column, nor is anything else in this line: expected a header (boat, class, seat, side, item, at, reading, ...), its names separated by commas, semicolons or tabs."
        },
        {
            "no column for the point of a gate",
            Csv.Lines(
                "boat,class,seat,side,item,reading",
                "Kestrel,4-,1,port,pin-aft,0.5",
                "Kestrel,4-,1,port,gate,4.5",
                "Kestrel,4-,2,starboard,gate,4.5"),
            "round.csv, line 3, column at: not in the header, while this row reads a gate: add the column, with catch, abeam or finish, or degrees from abeam."
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(8, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_of_a_header_is_named_at_once_with_its_remedy(
        string fault, string text, string expected)
    {
        Assert.NotEmpty(fault);
        Assert.Equal(expected, Csv.ErrorsOf(text));
    }
}
