using System.Text;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Whatever a file holds, reading it ends in readings or in messages, never in an exception.</summary>
public sealed class FuzzTests
{
    private const int Normally = 4_000;

    private const int Wholly = 100_000;

    private static readonly byte[][] s_files =
    [
        Encoding.UTF8.GetBytes(Csv.RackRows(
            ",,,,level,,,,0.3,-0.1,,2026-04-01,,A2,soft",
            "Kestrel,4-,1,starboard,gate,catch,4.5,inverted,,,blue,2026-05-04,,A2,",
            "\"Kestrel\",4-,2,port,pin-aft,,-0.5,inverted,bubble,,blue,2026-05-04,\"worn, \"\"new\"\"\",B1,",
            "Grebe,2x,2,port,gate,-20.5,2,upright,0.1,0,,,,,")),
        [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("Boat;CLASS;seat;side;at;reading;weather\r\nMöwe;−4;1;port;finish;4,5°;\"a\r\nb\"\r\n;;;;;;\r\n")],
        [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("boat\tclass\tseat\tside\tat\treading\rTeal\t1x\t1\tport\tcatch\t4\r")],
        "boat,class,seat,side,item,reading,unit,date\nTeal,2x,1,port,inboard,34.6,in,2026-05-04\nTeal,2x,1,,span,159.5,,\nTeal,2x,2,,stretcher-angle,42,deg,\n"u8.ToArray(),
        "item,rack,bow_high,port_low\nlevel,A2,0.3,0.1\n"u8.ToArray(),
    ];

    private static readonly byte[][] s_scraps =
    [
        "\""u8.ToArray(), "\"\""u8.ToArray(), ","u8.ToArray(), ";"u8.ToArray(), "\t"u8.ToArray(), "\r"u8.ToArray(), "\n"u8.ToArray(),
        "\r\n"u8.ToArray(), "-"u8.ToArray(), "\u2212"u8.ToArray(), "°"u8.ToArray(), "1e308"u8.ToArray(), "1e-308"u8.ToArray(),
        "99999999999999999999"u8.ToArray(), "level"u8.ToArray(), "rack"u8.ToArray(), "eye"u8.ToArray(), "bubble"u8.ToArray(),
        "sep=;"u8.ToArray(), "boat"u8.ToArray(), "reading"u8.ToArray(), "4. May"u8.ToArray(), "9999-12-31"u8.ToArray(), "'="u8.ToArray(),
        [0], [0xFF], [0xFE, 0xFF], [0xC3], [0xED, 0xA0, 0x80], "PK\u0003\u0004"u8.ToArray(), "\U0001F6A3"u8.ToArray(), "\uFEFF"u8.ToArray(),
    ];

    [Fact]
    public void No_file_of_readings_makes_an_exception()
    {
        foreach ((byte[] file, string which) in Mutants(s_files, seed: 20_260_504))
        {
            try
            {
                Check(file);
            }
            catch (Exception fault)
            {
                Assert.Fail($"{which}: {Convert.ToBase64String(file)}\n{fault}");
            }
        }
    }

    [Fact]
    public void No_standard_makes_an_exception()
    {
        byte[] standard = Encoding.UTF8.GetBytes(StandardFileTests.Whole);
        foreach ((byte[] file, string which) in Mutants([standard], seed: 7))
        {
            try
            {
                StandardInput input = StandardFile.Read("standard.json", new MemoryStream(file));
                Assert.Equal(input.Standard is null, input.Errors.Count > 0);
            }
            catch (Exception fault)
            {
                Assert.Fail($"{which}: {Convert.ToBase64String(file)}\n{fault}");
            }
        }
    }

    private static void Check(byte[] file)
    {
        ReadingsInput input = Csv.Read(file);
        Assert.Equal(input.Errors.Count > 0, input.Boats.Count + input.Measures.Count == 0);
        int lines = file.Count(b => b is (byte)'\n' or (byte)'\r') + 1;
        Assert.All(input.Errors.Concat(input.Warnings), e => Assert.InRange(e.Line ?? 1, 1, lines));
        Assert.All(input.Errors.Concat(input.Warnings), e => Assert.DoesNotContain(e.ToString(), char.IsControl));
        Csv.AssertSame(input.Boats, Csv.Read(RoundTripTests.Written(input.Boats)).Boats);
    }

    private static IEnumerable<(byte[] File, string Which)> Mutants(byte[][] files, int seed) =>
        Mutation.Of(files, s_scraps, seed, Effort.Of(Normally, Wholly));
}
