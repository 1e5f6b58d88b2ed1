using System.Globalization;
using System.Text;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>In which pieces a file arrives makes no difference, nor does where a buffer ends.</summary>
public sealed class PieceTests
{
    private const int Rows = 4_000;

    public static TheoryData<string> LineEnds => ["\n", "\r\n", "\r"];

    [Theory]
    [MemberData(nameof(LineEnds))]
    public void Every_line_is_counted_once(string lineEnd)
    {
        ReadingsInput input = ReadingsCsv.Read([new(Csv.Name, new MemoryStream(File(lineEnd)))], MeasuringSettings.Default);
        Assert.Equal(ExpectedLines(), input.Errors.Select(e => e.Line!.Value));
    }

    [Theory]
    [MemberData(nameof(LineEnds))]
    public void A_file_that_dribbles_in_reads_as_a_whole_one(string lineEnd)
    {
        using var dribble = new DribblingStream(File(lineEnd), seed: 5);
        ReadingsInput whole = ReadingsCsv.Read([new(Csv.Name, new MemoryStream(File(lineEnd)))], MeasuringSettings.Default);
        ReadingsInput pieces = ReadingsCsv.Read([new(Csv.Name, dribble)], MeasuringSettings.Default);
        Assert.Equal(whole.Errors, pieces.Errors);
    }

    [Fact]
    public void So_does_one_without_an_error()
    {
        string text = Csv.Rows([.. Enumerable.Range(0, Rows).Select(i => $"Möwe {i % 40},8+,{1 + (i % 8)},{(i % 2 == 0 ? "port" : "starboard")},gate,{i % 90},{i % 30},,,,,,\"a\r\n\"\"b\"\"\"")]);
        using var dribble = new DribblingStream(Encoding.UTF8.GetBytes(text), seed: 6);
        ReadingsInput pieces = ReadingsCsv.Read([new(Csv.Name, dribble)], MeasuringSettings.Default);
        Csv.AssertSame(Csv.BoatsOf(text), Csv.Boats(pieces));
        Assert.Equal(Rows, pieces.Notes.Count(n => n.Text == "a\n\"b\""));
    }

    /// <summary>Rows of all lengths, some over two lines, some blank; every tenth is wrong.</summary>
    private static byte[] File(string lineEnd)
    {
        var text = new StringBuilder(Csv.Header).Append(lineEnd);
        for (int i = 0; i < Rows; i++)
        {
            string seat = i % 10 == 0 ? "0" : "1";
            text.Append(CultureInfo.InvariantCulture, $"Kestrel,4-,{seat},port,gate,catch,4.5,,,,,,\"{new string('ö', i % 61)}{(i % 7 == 0 ? lineEnd : "")}\"").Append(lineEnd);
            text.Append(i % 5 == 0 ? lineEnd : "");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static List<int> ExpectedLines()
    {
        var lines = new List<int>();
        int line = 2;
        for (int i = 0; i < Rows; i++)
        {
            if (i % 10 == 0)
            {
                lines.Add(line);
            }

            line += 1 + (i % 7 == 0 ? 1 : 0) + (i % 5 == 0 ? 1 : 0);
        }

        return lines;
    }
}
