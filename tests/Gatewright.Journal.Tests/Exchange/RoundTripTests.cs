using System.Text;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What is written reads back as it is.</summary>
public sealed class RoundTripTests
{
    [Property(Arbitrary = [typeof(AnyShed)], MaxTest = 300)]
    public void Written_readings_read_back_the_same(AShed shed) => Csv.AssertSame(shed.Boats, Csv.BoatsOf(Written(shed.Boats)));

    [Property(Arbitrary = [typeof(AnyShed)], MaxTest = 300)]
    public void The_order_of_rows_and_how_they_are_spread_over_files_changes_no_reading(AShed shed, int seed)
    {
        string[] lines = Written(shed.Boats).TrimEnd('\n').Split('\n');
        string[] rows = lines[1..];
        new Random(seed).Shuffle(rows);
        string[] files = [.. rows.Chunk(Math.Max(1, rows.Length / 3)).Select(part => Csv.Lines([lines[0], .. part]))];
        IReadOnlyList<BoatReadings> boats = Csv.BoatsOf(files);
        Assert.Equal(Counted(shed.Boats), Counted(boats));
    }

    [Fact]
    public void What_is_written_is_this()
    {
        MeasuringSettings settings = MeasuringSettings.Default;
        var rack = new Rack("A2", HullAttitude.FromDegrees(0.25, -0.1), Bedding.Soft, new DateOnly(2026, 4, 1));
        var onRack = new BoatLie(Lie.Inverted, new HullLevel.OfRack(rack), new DateOnly(2026, 5, 4));
        var byEye = new BoatLie(Lie.Inverted, new HullLevel.ByEye(), new DateOnly(2026, 5, 4));
        var upright = new BoatLie(Lie.Upright, new HullLevel.ByEye());
        GatePlace bow = new(1, Side.Port);
        BoatReadings[] boats =
        [
            new("=Kestrel, \"red\"", BoatClass.Parse("4-"),
            [
                new(ReadItem.Gate, bow, settings.Sweep.Point(Station.Catch), Angle.FromDegrees(4.5), onRack, settings.GaugeNamed("blue")),
                new(ReadItem.Gate, bow, new(OarAngle.FromDegrees(-20.5), null), Angle.FromDegrees(-1), byEye, settings.GaugeNamed("blue")),
                new(ReadItem.PinOut, bow, settings.Sweep.Point(Station.Abeam), Angle.FromDegrees(0), upright, settings.GaugeNamed("gauge")),
            ]),
        ];
        Assert.Equal(
            """"
            boat,class,seat,side,item,at,reading,lie,bow_high,port_low,gauge,date,note,rack,bed
            ,,,,level,,,,0.25,-0.1,,2026-04-01,,A2,soft
            "'=Kestrel, ""red""",4-,1,port,gate,catch,4.5,inverted,rack,rack,blue,2026-05-04,,A2,
            "'=Kestrel, ""red""",4-,1,port,gate,-20.5,-1,inverted,eye,eye,blue,2026-05-04,,,
            "'=Kestrel, ""red""",4-,1,port,pin-out,,0,upright,,,,,,,

            """",
            Written(boats));
        Csv.AssertSame(boats, Csv.BoatsOf(Written(boats)));
    }

    [Fact]
    public void Without_a_rack_there_are_no_columns_for_racks() => Assert.Equal(
        Csv.Rows("Grebe,1x,1,port,gate,catch,4.5,upright,,,,,"), Written(Csv.BoatsOf(Csv.Rows("Grebe,1x,1,port,,catch,4.5,,,,,,"))));

    [Fact]
    public void Two_boats_of_one_name_are_not_written()
    {
        BoatReadings boat = Csv.BoatsOf(Csv.Rows("Grebe,1x,1,port,gate,catch,4.5,,,,,,"))[0];
        Assert.Throws<ArgumentException>(() => Written([boat, boat with { Boat = "GREBE" }]));
    }

    [Fact]
    public void A_rack_that_would_read_back_as_it_lay_on_another_day_is_not_written()
    {
        BoatReadings boat = Csv.BoatsOf(Csv.Rows("Grebe,1x,1,port,gate,catch,4.5,,,,,2026-05-04,"))[0];
        BoatReadings On(string name, Rack rack) => boat with
        {
            Boat = name,
            Readings = [boat.Readings[0] with { Lie = boat.Readings[0].Lie with { Level = new HullLevel.OfRack(rack) } }],
        };
        var april = new Rack("A2", HullAttitude.Level, Bedding.Firm, new DateOnly(2026, 4, 1));
        Assert.NotEmpty(Written([On("Grebe", april), On("Teal", april)]));
        Assert.Throws<ArgumentException>(() => Written([On("Grebe", april), On("Teal", april with { ReadOn = new DateOnly(2026, 3, 1) })]));
        Assert.Throws<ArgumentException>(() => Written([On("Grebe", april), On("Teal", april with { Bedding = Bedding.Soft })]));
    }

    internal static string Written(IReadOnlyList<BoatReadings> boats)
    {
        using var text = new StringWriter(new StringBuilder());
        ReadingsCsv.Write(text, boats);
        return text.ToString();
    }

    /// <summary>Every reading of every boat with how often it is there.</summary>
    private static Dictionary<(string, BoatClass, Reading), int> Counted(IReadOnlyList<BoatReadings> boats) =>
        boats.SelectMany(b => b.Readings.Select(r => (b.Boat, b.Class, r))).CountBy(r => r).ToDictionary();
}
