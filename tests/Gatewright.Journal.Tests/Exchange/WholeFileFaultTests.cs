using System.Text;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What can be wrong with a file as a whole: its bytes, its encoding, its quote marks.</summary>
public sealed class WholeFileFaultTests
{
    private const string Good = "Kestrel,4-,1,port,gate,catch,4.5,,,,,,";

    private const string Empty =
        "round.csv: nothing in it: expected a header (boat, class, seat, side, item, at, reading, ...) and under it a row for each reading.";

    private const string OnlyHeader = "round.csv: a header with nothing under it: expected a row for each reading.";

    private const string Workbook =
        "round.csv: a spreadsheet program's own file, not CSV: open it there and save the sheet as CSV in the encoding UTF-8 (often listed as \"CSV UTF-8\").";

    private const string NotText =
        "not text: a character stands here that no text file has. Open the file in the program that made it and save the sheet as CSV in the encoding UTF-8 (often listed as \"CSV UTF-8\"). Nothing from this row on was read.";

    private const string NotUtf8 =
        "holds a character that is not UTF-8, so its letters cannot be told: save the sheet as CSV in the encoding UTF-8 (often listed as \"CSV UTF-8\"). Nothing from this row on was read.";

    private const string Stray =
        "has a quote mark inside: put the whole cell in quote marks and double the one inside it, \"6\"\" washer\".";

    public static TheoryData<string, byte[], string> Faults => new()
    {
        { "nothing at all", [], Empty },
        { "only a byte order mark", [0xEF, 0xBB, 0xBF], Empty },
        { "only blank rows", "  ,,\n;;\n\n"u8.ToArray(), Empty },
        { "a header alone", Utf8(Csv.Rows()), OnlyHeader },
        { "a header over blank rows", Utf8(Csv.Rows(",,,,,,,,,,,,", "", "\"\",")), OnlyHeader },
        { "a picture", [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10, 0, 0, 0, 13], "round.csv, line 1: " + NotText },
        { "a workbook", [(byte)'P', (byte)'K', 3, 4, 20, 0, 6, 0], Workbook },
        { "an old workbook", [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1], Workbook },
        { "a NUL in a row", Utf8(Csv.Rows(Good, "Kes\0trel,4-,2,port,gate,catch,4.5,,,,,,")), "round.csv, line 3: " + NotText },
        { "UTF-16 without its mark", Encoding.Unicode.GetBytes(Csv.Rows(Good)), "round.csv, line 1: " + NotText },
        { "Windows-1252", Encoding.Latin1.GetBytes(Csv.Rows(Good, "Möwe,4-,1,port,gate,catch,4.5,,,,,,")), "round.csv, line 3: 'M\uFFFD' " + NotUtf8 },
        {
            "a damaged letter far along a row",
            [.. Utf8(Csv.Rows(Good) + "Kestrel,4-,2,starboard,gate,catch,4.5,,,,,,after the storm"), 0xFF, .. "\nno,row\n"u8],
            "round.csv, line 3: ',,,,,after the storm\uFFFD' " + NotUtf8
        },
        { "half a letter at the end", [.. Utf8(Csv.Rows(Good) + "M"), 0xC3], "round.csv, line 3: '\uFFFD' " + NotUtf8 },
        {
            "a quote mark never closed",
            Utf8(Csv.Rows('"' + Good, Good)),
            "round.csv, line 2: '\"Kestrel,4-,1,port,gate,catch,4.5,,,,,, …' opens with a quote mark that is never closed: close it, or double it where it belongs to the text. Nothing from this row on was read."
        },
        {
            "quote marks that take two rows for one",
            Utf8(Csv.Rows(Good + "6\" pin", "Kestrel,4-,2,west,gate,catch,4.5,,,,,,4\" pin", Good)),
            "round.csv, line 2: '6\" pin Kestrel,4-,2,west,gate,catch,4.5,…' " + Stray + " Nothing from this row on was read."
        },
        {
            "quote marks in a cell of one line",
            Utf8(Csv.Rows(Good + "a \"new\" insert", "Kestrel,4-,2,west,gate,catch,4.5,,,,,,")),
            Csv.Messages(
                "round.csv, line 2: 'a \"new\" insert' " + Stray,
                "round.csv, line 3, column side: 'west' is not a side: expected port or starboard, as one sees them facing the bow.")
        },
        { "text behind a closing quote mark", Utf8(Csv.Rows("\"Kestrel\" II,4-,1,port,gate,catch,4.5,,,,,,")), "round.csv, line 2: '\"Kestrel\" II' " + Stray },
        {
            "a row without end",
            Utf8(Csv.Rows(Good, new string('x', 65_537))),
            "round.csv, line 3: more than 65,536 characters in one row: expected a line end after each row. Nothing from this row on was read."
        },
        {
            "a quoted cell without end",
            Utf8(Csv.Rows(Good, "a,\"" + new string('\n', 65_537), "\"")),
            "round.csv, line 3: a quote mark opens here and 65,536 characters later none has closed it: close it, or double it where it belongs to the text. Nothing from this row on was read."
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(19, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_of_a_file_is_one_message_with_its_remedy(string fault, byte[] file, string expected)
    {
        Assert.NotEmpty(fault);
        Assert.Equal(expected, Csv.ErrorsOf(file));
    }

    [Fact]
    public void A_file_that_cannot_be_read_does_not_hide_the_faults_of_the_others() => Assert.Equal(
        Csv.Messages(Empty, "round2.csv, line 2, column seat: '9' is not a seat of 4-: expected a whole number from 1 (bow) to 4."),
        Csv.ErrorsOf([], Utf8(Csv.Rows("Kestrel,4-,9,port,gate,catch,4.5,,,,,,"))));

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
