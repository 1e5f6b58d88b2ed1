using System.Text;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Printing.RoundSheets;
using Gatewright.Printing.Tests.World;

namespace Gatewright.Printing.Tests.RoundSheets;

public class RoundSheetTests
{
    /// <summary>Seats over the boxes stand in the order of the walk: down port, back along starboard.</summary>
    [Theory]
    [InlineData("Hornbeam", "2 4 6 8 7 5 3 1")]
    [InlineData("Nuthatch", "1 2 3 4 4 3 2 1")]
    [InlineData("Dipper", "1 1")]
    public void The_boxes_are_in_the_order_of_the_walk(string boat, string seats)
    {
        IReadOnlyList<BoatStanding> boats = Printed.Full.Boats(boat);
        using var pdf = new Poppler(RoundSheetPrint.Of(Printed.Full.Club, boats, Stations.All, ExampleClub.Imprint()));
        string line = pdf.Text().Split('\n').Single(l => l.Trim().Length > 0 && l.All(c => char.IsDigit(c) || c == ' '));
        Assert.Equal(seats, string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries)));
    }

    [Fact]
    public void Every_boat_is_on_it_with_a_row_for_each_station_that_is_read()
    {
        using var pdf = new Poppler(RoundSheetPrint.Of(Printed.Full.Club, Printed.Full.Boats(), [Station.Abeam], ExampleClub.Imprint()));
        string said = pdf.Said();
        Assert.All(Printed.Full.Boats().Where(b => b.View.Name != Printed.LongName), boat => Assert.Contains(boat.View.Name, said, StringComparison.Ordinal));
        Assert.Equal(Printed.Full.Boats().Count, said.Split("Abeam ").Length - 1);
        Assert.DoesNotContain("Catch", said, StringComparison.Ordinal);
    }

    /// <summary>The whole way of a day without a phone: the table is written, readings typed behind, the rest left out, and it is read without a word of complaint.</summary>
    [Fact]
    public void The_table_filled_in_is_read_as_it_was_meant()
    {
        ExampleClub club = Printed.Full;
        IReadOnlyList<BoatView> boats = [.. RoundSheetPrint.InOrder(club.Club, club.Boats()).Select(b => b.View)];
        string[] lines = Table(club, boats, [Station.Catch, Station.Abeam]);
        Assert.Equal(1 + (2 * boats.Sum(b => b.Class!.Gates)), lines.Length);

        string[] filled = [lines[0], .. lines.Skip(1).Where((_, i) => i % 3 == 0).Select(l => l.Replace(",,inverted", ",4.5,inverted", StringComparison.Ordinal).Replace(",,upright", ",4.5,upright", StringComparison.Ordinal))];
        ReadingsInput read = Read(filled);

        Assert.Empty(read.Errors);
        Assert.Empty(read.Warnings);
        Assert.Equal(filled.Length - 1, read.Boats.Sum(b => b.Readings.Count));
        Assert.All(read.Boats.SelectMany(b => b.Readings), r => Assert.Equal(4.5, r.Value.Degrees));
        foreach (BoatView boat in boats)
        {
            HashSet<GatePlace> gates = [.. BoatGates.Of(club.Club, boat)];
            Assert.All(read.Boats.Single(b => b.Boat == boat.Name).Readings, r => Assert.Contains(r.Gate, gates));
            Assert.Equal(BoatBerth.Of(boat).Lie, read.Boats.Single(b => b.Boat == boat.Name).Readings[0].Lie.Lie);
        }
    }

    [Fact]
    public void Rows_that_were_not_read_are_told_of_and_nothing_is_taken()
    {
        ReadingsInput read = Read(Table(Printed.Full, [Printed.Full.Boats("Dipper")[0].View], [Station.Abeam]));
        Assert.All(read.Errors, e => Assert.Contains("leave the row out if it was not read", e.ToString(), StringComparison.Ordinal));
        Assert.Equal(2, read.Errors.Count);
    }

    /// <summary>A sheet of the app's round and this one ask for the same gates.</summary>
    [Fact]
    public void The_table_follows_the_walk()
    {
        BoatView boat = Printed.Full.Boats("Hornbeam")[0].View;
        IEnumerable<string> seats = Table(Printed.Full, [boat], [Station.Abeam]).Skip(1).Select(l => l.Split(',')[2] + l.Split(',')[3]);
        Assert.Equal(
            RoundOrder.Of(BoatGates.Of(Printed.Full.Club, boat), [Station.Abeam]).Select(s => $"{s.Gate.Seat}{s.Gate.Side.Word()}"), seats);
    }

    private static string[] Table(ExampleClub club, IReadOnlyList<BoatView> boats, IReadOnlyList<Station> stations)
    {
        using var text = new StringWriter { NewLine = "\n" };
        RoundTemplate.Write(text, club.Club, boats, stations);
        return text.ToString().TrimEnd('\n').Split('\n');
    }

    private static ReadingsInput Read(IEnumerable<string> lines)
    {
        using var content = new MemoryStream(Encoding.UTF8.GetBytes(string.Join('\n', lines)));
        return ReadingsCsv.Read([new("round.csv", content)], CheckSettings.Default.Diagnosing.Measuring);
    }
}
