using System.Text;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Files of readings for tests, and what comes of reading them.</summary>
internal static class Csv
{
    public const string Header = "boat,class,seat,side,item,at,reading,lie,bow_high,port_low,gauge,date,note";

    public const string Name = "round.csv";

    /// <summary>Rows under the header of the format.</summary>
    public static string Rows(params string[] rows) => Lines([Header, .. rows]);

    /// <summary>Rows under that header and the columns for racks.</summary>
    public static string RackRows(params string[] rows) => Lines([Header + ",rack,bed", .. rows]);

    public static string Lines(params string[] lines) => string.Concat(lines.Select(l => l + "\n"));

    /// <summary>The messages as one text, so that a difference shows where it is.</summary>
    public static string Messages(params string[] messages) => string.Join('\n', messages);

    public static ReadingsInput Read(params string[] texts) => Read([.. texts.Select(Encoding.UTF8.GetBytes)]);

    public static ReadingsInput Read(params byte[][] files) => ReadingsCsv.Read(
        files.Select((bytes, i) => new ReadingsSource(i == 0 ? Name : $"round{i + 1}.csv", new MemoryStream(bytes))),
        MeasuringSettings.Default);

    /// <summary>All errors of one file. That nothing is judged from a file with errors is part of every check.</summary>
    public static string ErrorsOf(params string[] texts) => Errors(Read(texts));

    public static string ErrorsOf(params byte[][] files) => Errors(Read(files));

    public static string Warnings(ReadingsInput input) => Messages([.. input.Warnings.Select(w => w.ToString())]);

    /// <summary>The boats of files without an error.</summary>
    public static IReadOnlyList<BoatReadings> BoatsOf(params string[] texts) => Boats(Read(texts));

    public static IReadOnlyList<BoatReadings> Boats(ReadingsInput input)
    {
        Assert.Equal("", Messages([.. input.Errors.Select(e => e.ToString())]));
        return input.Boats;
    }

    /// <summary>That two sheds hold the same boats with the same readings, in the same order.</summary>
    public static void AssertSame(IReadOnlyList<BoatReadings> expected, IReadOnlyList<BoatReadings> actual)
    {
        Assert.Equal(expected.Select(b => (b.Boat, b.Class)), actual.Select(b => (b.Boat, b.Class)));
        foreach ((BoatReadings e, BoatReadings a) in expected.Zip(actual))
        {
            Assert.Equal(e.Readings, a.Readings);
        }
    }

    private static string Errors(ReadingsInput input)
    {
        Assert.Equal(input.Errors.Count > 0, input.Boats.Count == 0);
        return Messages([.. input.Errors.Select(e => e.ToString())]);
    }
}
