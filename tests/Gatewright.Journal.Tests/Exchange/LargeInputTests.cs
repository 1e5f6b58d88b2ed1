using System.Text;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>A file of 100 MB that is no file of readings takes neither memory nor patience.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class LargeInputTests
{
    private const long Megabyte = 1_000_000;

    private const long Whole = 100 * Megabyte;

    /// <summary>
    /// Bytes that may be allocated, whatever the length. Buffers come to 0.4 MB (bytes 16 kB, characters 197 kB and
    /// 131 kB); the row reader's own grow with the longest row, to another 0.5 MB; a thousand errors to 0.5 MB; a
    /// thousand boats, met before the thousand errors are full, to 1.5 MB; unoptimised code makes a little more. One
    /// string a row would be 6.4 MB more in two hundred thousand rows.
    /// </summary>
    private const long MostAllocated = 6 * Megabyte;

    private const string NotText =
        "not text: a character stands here that no text file has. Open the file in the program that made it and save the sheet as CSV in the encoding UTF-8 (often listed as \"CSV UTF-8\"). Nothing from this row on was read.";

    private const string NoEnd =
        "more than 65,536 characters in one row: expected a line end after each row. Nothing from this row on was read.";

    private static readonly byte[] s_header = Encoding.UTF8.GetBytes(Csv.Rows());

    [Fact]
    public void Noise() => Assert.Equal("round.csv, line 1: " + NotText, Errors([], NoiseOf(seed: 1)));

    [Fact]
    public void Noise_under_a_header() => Assert.Equal("round.csv, line 2: " + NotText, Errors(s_header, NoiseOf(seed: 2)));

    [Fact]
    public void Nothing_but_NUL() => Assert.Equal("round.csv, line 1: " + NotText, Errors([], [0]));

    [Fact]
    public void A_line_without_end() => Assert.Equal("round.csv, line 1: " + NoEnd, Errors([], "x"u8));

    [Fact]
    public void A_row_without_end() => Assert.Equal("round.csv, line 2: " + NoEnd, Errors(s_header, ","u8));

    [Fact]
    public void A_quoted_cell_without_end() => Assert.Equal(
        "round.csv, line 3: a quote mark opens here and 65,536 characters later none has closed it: close it, or double it where it belongs to the text. Nothing from this row on was read.",
        Errors([.. s_header, .. "Kestrel,4-,1,port,gate,catch,4.5,,,,,,\n\""u8], "one line\n"u8));

    [Fact]
    public void A_cell_of_a_megabyte() => Assert.Equal(
        "round.csv, line 2: " + NoEnd, Errors(s_header, [.. "Kestrel,4-,1,port,gate,catch,4.5,,,,,,"u8, .. new string('x', 1_000_000).Select(c => (byte)c), (byte)'\n']));

    [Fact]
    public void Blank_lines() => Assert.Equal(
        "round.csv: nothing in it: expected a header (boat, class, seat, side, item, at, reading, ...) and under it a row for each reading.",
        Errors([], ",,,,,,,,,,,,,,,,,,\r\n"u8));

    [Fact]
    public void Columns_without_end_in_their_header() => Assert.Equal(
        "round.csv, line 1: " + NoEnd, Errors("boat,class,seat,side,at,reading,"u8, "a,"u8));

    [Fact]
    public void Rows_of_nothing_but_errors_of_which_a_thousand_are_kept()
    {
        byte[] row = "Kestrel,4-,11,left,gates,middle,4. May,flat,1,,,4/5/26,so it goes\n"u8.ToArray();
        int rows = Effort.Of(200_000, (int)(Whole / row.Length));
        ReadingsInput input = Read(s_header, row, s_header.Length + ((long)rows * row.Length));
        Assert.Equal(1_000, input.Errors.Count);
        Assert.Equal((7L * rows) - 1_000, input.ErrorsBeyond);
    }

    [Fact]
    public void Rows_of_different_boats_each_with_an_error()
    {
        int rows = Effort.Of(200_000, 2_000_000);
        ReadingsInput input = Read(s_header, Encoding.UTF8.GetBytes(string.Concat(
            Enumerable.Range(0, rows).Select(i => $"Boat {i},4-,1,port,gate,catch,99,,,,,,\n"))), long.MaxValue, once: true);
        Assert.Equal(rows - 1_000, input.ErrorsBeyond);
    }

    private static string Errors(ReadOnlySpan<byte> start, ReadOnlySpan<byte> pattern) =>
        Csv.Messages([.. Read(start.ToArray(), pattern.ToArray(), Whole).Errors.Select(e => e.ToString())]);

    private static ReadingsInput Read(byte[] start, byte[] pattern, long length, bool once = false)
    {
        using var stream = new EndlessStream(start, pattern, once ? start.Length + pattern.Length : length);
        long before = GC.GetAllocatedBytesForCurrentThread();
        ReadingsInput input = ReadingsCsv.Read([new(Csv.Name, stream)], MeasuringSettings.Default);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(allocated <= MostAllocated, $"{allocated:N0} bytes allocated, more than {MostAllocated:N0}");
        Assert.Empty(input.Boats);
        return input;
    }

    private static byte[] NoiseOf(int seed)
    {
        byte[] noise = new byte[Megabyte];
        new Random(seed).NextBytes(noise);
        return noise;
    }
}
