using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Several files make one shed.</summary>
public sealed class SeveralSourcesTests
{
    [Fact]
    public void A_boat_in_two_files_is_one_boat_and_boats_come_in_order_of_first_appearance()
    {
        IReadOnlyList<BoatReadings> boats = Csv.BoatsOf(
            Csv.Rows("Grebe,1x,1,port,gate,catch,4.5,,,,,,", "Blue  Heron,4-,1,port,gate,catch,4,,,,,,"),
            Csv.Rows("BLUE HERON,4-,2,starboard,gate,catch,3,,,,,,", "blueheron,4-,3,port,gate,catch,2,,,,,,", "Teal,1x,1,port,gate,catch,4.5,,,,,,"));
        Assert.Equal(["Grebe", "Blue Heron", "Teal"], boats.Select(b => b.Boat));
        Assert.Equal([4.0, 3.0, 2.0], boats[1].Readings.Select(r => r.Value.Degrees));
    }

    [Fact]
    public void A_gauge_in_two_files_is_one_gauge()
    {
        IReadOnlyList<BoatReadings> boats = Csv.BoatsOf(
            Csv.Rows("Grebe,1x,1,port,gate,catch,4.5,,,,Blue,,"),
            Csv.Rows("Teal,1x,1,port,gate,catch,4.5,,,,blue ,,"));
        Assert.Same(boats[0].Readings[0].Gauge, boats[1].Readings[0].Gauge);
    }

    [Fact]
    public void A_level_in_one_file_holds_for_the_rows_of_another() => Assert.All(
        Assert.Single(Csv.BoatsOf(
            Csv.Rows("Grebe,1x,1,port,gate,catch,4.5,,,,,,"),
            Csv.Rows("Grebe,1x,1,starboard,gate,catch,4.5,,bubble,,,,"))).Readings,
        reading => Assert.Equal(new HullLevel.BubbleCentred(), reading.Lie.Level));

    [Fact]
    public void Repeats_are_kept_as_they_are() => Assert.Equal(
        2, Assert.Single(Csv.BoatsOf(Csv.Rows("Grebe,1x,1,port,gate,catch,4.5,,,,,,", "Grebe,1x,1,port,gate,catch,4.5,,,,,,"))).Readings.Count);

    [Fact]
    public void No_file_is_nothing_read_and_nothing_wrong()
    {
        ReadingsInput input = ReadingsCsv.Read([], MeasuringSettings.Default);
        Assert.Equal((0, 0, 0, 0), (input.Boats.Count, input.Errors.Count, input.Warnings.Count, input.ErrorsBeyond));
    }

    [Fact]
    public void A_stream_is_left_open()
    {
        using var stream = new MemoryStream("boat\n"u8.ToArray());
        ReadingsCsv.Read([new("round.csv", stream)], MeasuringSettings.Default);
        Assert.True(stream.CanRead);
    }
}
