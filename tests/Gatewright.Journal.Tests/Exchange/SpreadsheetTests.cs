using System.Text;
using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>The same readings as spreadsheets, word processors and hurried people write them.</summary>
public sealed class SpreadsheetTests
{
    private const string Plain =
        """
        boat,class,seat,side,item,at,reading,lie,bow_high,port_low,gauge,date,note
        Kestrel,4-,1,starboard,gate,catch,4.5,inverted,0.3,-0.1,blue,2026-05-04,
        Kestrel,4-,1,starboard,pin-aft,,-0.5,inverted,,,blue,2026-05-04,
        Grebe,2x,2,port,gate,finish,2,upright,,,,,
        Grebe,2x,2,port,gate,-20.5,3.25,upright,,,,,

        """;

    public static TheoryData<string, byte[]> Variants => new()
    {
        { "UTF-8 with a byte order mark", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Plain)] },
        { "UTF-16, little end first", [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(Plain)] },
        { "UTF-16, big end first", [.. Encoding.BigEndianUnicode.GetPreamble(), .. Encoding.BigEndianUnicode.GetBytes(Plain)] },
        { "CR LF", Utf8(Plain.Replace("\n", "\r\n", StringComparison.Ordinal)) },
        { "CR", Utf8(Plain.Replace('\n', '\r')) },
        { "no end to the last line", Utf8(Plain.TrimEnd('\n')) },
        { "semicolons", Utf8(Plain.Replace(',', ';')) },
        { "semicolons and decimal commas", Utf8(Plain.Replace(',', ';').Replace('.', ',')) },
        { "tabs", Utf8(Plain.Replace(',', '\t')) },
        { "tabs and decimal commas", Utf8(Plain.Replace(',', '\t').Replace('.', ',')) },
        { "a line that states the separator", Utf8("sep=;\r\n" + Plain.Replace(',', ';')) },
        { "a quoted line that states it", Utf8("\"sep=,\"\n" + Plain) },
        { "everything quoted", Utf8(QuoteAll(Plain)) },
        { "decimal commas in quote marks", Utf8(Plain.Replace("4.5", "\"4,5\"", StringComparison.Ordinal).Replace("0.3", "\"0,3\"", StringComparison.Ordinal)) },
        { "upper case, kept in names", Utf8(UpperCase(Plain)) },
        { "blank rows", Utf8("\n,,,\n" + Plain.Replace("\n", "\n\n,,,,,,,,,,,,\n \t \n", StringComparison.Ordinal)) },
        { "blank columns at the end", Utf8(Plain.Replace("\n", ",,,\n", StringComparison.Ordinal)) },
        { "rows cut short", Utf8(Plain.Replace(",,,,,\n", "\n", StringComparison.Ordinal)) },
        { "spaces around every cell", Utf8(Plain.Replace(",", " ,\t ", StringComparison.Ordinal)) },
        { "no-break spaces and marks of no width", Utf8(Plain.Replace(",", "\u00A0,\u202F\u200B", StringComparison.Ordinal).Replace("\n", "\uFEFF\n", StringComparison.Ordinal)) },
        { "a space in the class", Utf8(Plain.Replace("4-", "4 -", StringComparison.Ordinal)) },
        { "degree signs", Utf8(Plain.Replace("4.5,", "4.5°,", StringComparison.Ordinal).Replace("0.3", "0.3 °", StringComparison.Ordinal).Replace("20.5", "20.5º", StringComparison.Ordinal)) },
        { "minus signs", Utf8(Plain.Replace('-', '\u2212').Replace("2026\u221205\u221204", "2026-05-04", StringComparison.Ordinal)) },
        { "dashes", Utf8(Plain.Replace('-', '\u2013')) },
        { "a plus sign", Utf8(Plain.Replace("4.5,", "+4.5,", StringComparison.Ordinal)) },
        { "a times sign for x", Utf8(Plain.Replace("2x", "2×", StringComparison.Ordinal)) },
        { "the day first", Utf8(Plain.Replace("2026-05-04", "04.05.2026", StringComparison.Ordinal)) },
        { "the day first and short", Utf8(Plain.Replace("2026-05-04", "4.5.2026", StringComparison.Ordinal)) },
        { "numbers with needless decimals", Utf8(Plain.Replace("4-,1,", "4-,1.0,", StringComparison.Ordinal).Replace("4.5", "4.500", StringComparison.Ordinal)) },
        { "numbers with a power of ten", Utf8(Plain.Replace("4.5,", "4.50E+00,", StringComparison.Ordinal)) },
        { "numbers without a nought", Utf8(Plain.Replace(",0.", ",.", StringComparison.Ordinal).Replace("-0.", "-.", StringComparison.Ordinal)) },
        { "header names in their own words", Utf8(Plain.Replace("bow_high,port_low", "Bow High,PORT-LOW", StringComparison.Ordinal)) },
        { "an item with an underscore", Utf8(Plain.Replace("pin-aft", "Pin_Aft", StringComparison.Ordinal)) },
        { "columns in another order", Utf8(Reversed(Plain)) },
        { "a point of the stroke by its angle", Utf8(Plain.Replace("catch", "55", StringComparison.Ordinal)) },
        { "abeam for a pin", Utf8(Plain.Replace("pin-aft,,", "pin-aft,abeam,", StringComparison.Ordinal)) },
        { "default words left out", Utf8(Plain.Replace(",upright,", ",,", StringComparison.Ordinal).Replace(",gate,", ",,", StringComparison.Ordinal)) },
        { "the level in another row", Utf8(Plain.Replace("4.5,inverted,0.3,-0.1", "4.5,inverted,,", StringComparison.Ordinal).Replace("-0.5,inverted,,", "-0.5,inverted,0.3,-0.1", StringComparison.Ordinal)) },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(38, Variants.Count);

    [Fact]
    public void The_plain_file_means_what_it_says()
    {
        MeasuringSettings settings = MeasuringSettings.Default;
        IReadOnlyList<BoatReadings> boats = Csv.BoatsOf(Plain);
        var lie = new BoatLie(Lie.Inverted, new HullLevel.Read(Core.Geometry.HullAttitude.FromDegrees(0.3, -0.1)), new DateOnly(2026, 5, 4));
        var eye = new BoatLie(Lie.Upright, new HullLevel.ByEye());
        GatePlace bow = new(1, Side.Starboard);
        GatePlace stroke = new(2, Side.Port);
        Gauge blue = settings.GaugeNamed("blue");
        Gauge unnamed = settings.GaugeNamed("gauge");
        BoatReadings[] expected =
        [
            new("Kestrel", BoatClass.Parse("4-"),
            [
                new(ReadItem.Gate, bow, settings.Sweep.Point(Station.Catch), Core.Geometry.Angle.FromDegrees(4.5), lie, blue),
                new(ReadItem.PinAft, bow, settings.Sweep.Point(Station.Abeam), Core.Geometry.Angle.FromDegrees(-0.5), lie, blue),
            ]),
            new("Grebe", BoatClass.Parse("2x"),
            [
                new(ReadItem.Gate, stroke, settings.Scull.Point(Station.Finish), Core.Geometry.Angle.FromDegrees(2), eye, unnamed),
                new(ReadItem.Gate, stroke, new(Core.Geometry.OarAngle.FromDegrees(-20.5), null), Core.Geometry.Angle.FromDegrees(3.25), eye, unnamed),
            ]),
        ];
        Csv.AssertSame(expected, boats);
        Assert.Same(boats[0].Readings[0].Lie, boats[0].Readings[1].Lie);
        Assert.Same(boats[0].Readings[0].Gauge, boats[0].Readings[1].Gauge);
    }

    [Theory]
    [MemberData(nameof(Variants))]
    public void Every_variant_reads_as_the_plain_file(string variant, byte[] file)
    {
        Assert.NotEmpty(variant);
        Assert.NotEqual(Encoding.UTF8.GetBytes(Plain), file);
        Csv.AssertSame(Csv.BoatsOf(Plain), Csv.Boats(Csv.Read(file)));
    }

    [Fact]
    public void A_quoted_cell_keeps_separators_quote_marks_and_line_ends_as_line_feeds()
    {
        var input = Csv.Read(Csv.Rows(
            "\"Kestrel \"\"II\"\", red\",4-,1,port,gate,catch,4.5,,,,,,\"worn,\r\nchange it\"",
            "\"Kestrel \"\"II\"\", red\",4-,9,port,gate,catch,4.5,,,,,,"));
        Assert.Equal(
            "round.csv, line 4, column seat: '9' is not a seat of 4-: expected a whole number from 1 (bow) to 4.",
            Csv.Messages([.. input.Errors.Select(e => e.ToString())]));
        input = Csv.Read(Csv.Rows("\"Kestrel \"\"II\"\", red\",4-,1,port,gate,catch,4.5,,,,,,\"worn,\r\nchange it\""));
        Assert.Equal("Kestrel \"II\", red", Assert.Single(input.Boats).Boat);
        Assert.Equal("worn,\nchange it", Assert.Single(input.Notes).Text);
    }

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);

    private static string QuoteAll(string text) => string.Concat(
        text.TrimEnd('\n').Split('\n').Select(l => string.Join(',', l.Split(',').Select(c => $"\"{c}\"")) + "\n"));

    private static string Reversed(string text) => string.Concat(
        text.TrimEnd('\n').Split('\n').Select(l => string.Join(',', l.Split(',').Reverse()) + "\n"));

    private static string UpperCase(string text) => text.ToUpperInvariant()
        .Replace("KESTREL", "Kestrel", StringComparison.Ordinal)
        .Replace("GREBE", "Grebe", StringComparison.Ordinal)
        .Replace("BLUE", "blue", StringComparison.Ordinal);
}
