using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Exchange;

/// <summary>Writes boats as rows: racks first, with two columns more when there are any; measures of the rig last, with one more; one more where a boat lay alike twice on a day.</summary>
internal sealed class ReadingsWriter
{
    private readonly CsvRow _row;
    private readonly IReadOnlyList<BoatReadings> _boats;
    private readonly ILookup<string, Report> _told;
    private readonly IReadOnlyList<BoatMeasures> _measures;
    private readonly WrittenRacks _racks;
    private readonly WrittenLyings _lyings;

    public ReadingsWriter(
        TextWriter to, IReadOnlyList<BoatReadings> boats, ILookup<string, Report> told, IReadOnlyList<BoatMeasures> measures)
    {
        _row = new(to);
        _boats = boats;
        _told = told;
        _measures = measures;
        if (boats.GroupBy(b => NameText.Key(b.Boat)).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two boats are named '{twice.First().Boat}': give all readings of a boat together.", nameof(boats));
        }

        _lyings = WrittenLyings.Of(boats);
        _racks = WrittenRacks.Of(boats.SelectMany(b => b.Readings).Select(r => r.Lie).Distinct());
    }

    public void Write()
    {
        foreach (Column column in Columns)
        {
            _row.Cell(column.Name());
        }

        _row.End();
        foreach (Rack rack in _racks.All)
        {
            Write(rack);
        }

        foreach (BoatReadings boat in _boats)
        {
            Write(boat);
        }

        foreach (BoatMeasures boat in _measures)
        {
            foreach (WrittenMeasure measure in boat.Measures)
            {
                Write(boat, measure);
            }
        }
    }

    private IEnumerable<Column> Columns => Enum.GetValues<Column>().Where(c => c switch
    {
        Column.Rack or Column.Bed => _racks.All.Count > 0,
        Column.Unit => _measures.Count > 0,
        Column.Lying => _lyings.AreMarked,
        _ => true,
    });

    private void Write(BoatMeasures boat, WrittenMeasure measure) => Write(column => column switch
    {
        Column.Boat => NameText.Shielded(boat.Boat),
        Column.Class => boat.Class.Name,
        Column.Seat => measure.Reading.Place.Seat.ToString(CultureInfo.InvariantCulture),
        Column.Side => measure.Side?.Word() ?? "",
        Column.Item => measure.Reading.Measure.Word(),
        Column.Reading => measure.Value.ToString(CultureInfo.InvariantCulture),
        Column.Unit => measure.Unit.Word(),
        Column.Date => Day(measure.Reading.Day),
        _ => "",
    });

    private void Write(Rack rack) => Write(column => column switch
    {
        Column.Item => Vocabulary.Level,
        Column.BowHigh => Number(rack.Attitude.BowHigh.Angle),
        Column.PortLow => Number(rack.Attitude.PortLow.Angle),
        Column.Date => Day(rack.ReadOn),
        Column.Rack => NameText.Shielded(rack.Name),
        Column.Bed => Vocabulary.Beds.Word(rack.Bedding),
        _ => "",
    });

    private void Write(BoatReadings boat)
    {
        // A lying that shares its lie and day with another has to say how it was levelled, even when by eye.
        HashSet<BoatLie> crowded =
        [
            .. boat.Readings.Select(r => r.Lie).Distinct().GroupBy(l => (l.Lie, l.Date)).Where(g => g.Skip(1).Any()).SelectMany(g => g),
        ];
        foreach (Reading reading in boat.Readings)
        {
            Write(boat, reading, crowded.Contains(reading.Lie));
        }

        foreach (Report report in _told[boat.Boat])
        {
            Write(boat, report);
        }
    }

    private void Write(BoatReadings boat, Report report) => Write(column => column switch
    {
        Column.Boat => NameText.Shielded(boat.Boat),
        Column.Class => boat.Class.Name,
        Column.Seat => report.Gate?.Seat.ToString(CultureInfo.InvariantCulture) ?? "",
        Column.Side => (report.Gate?.Side ?? report.Side)?.Word() ?? "",
        Column.Item => Vocabulary.Told.Word(report.Kind),
        Column.Date => Day(report.Date),
        _ => "",
    });

    private void Write(BoatReadings boat, Reading reading, bool saysLevel)
    {
        (string bowHigh, string portLow) = Level(reading.Lie.Level, saysLevel);
        Write(column => column switch
        {
            Column.Boat => NameText.Shielded(boat.Boat),
            Column.Class => boat.Class.Name,
            Column.Seat => reading.Gate.Seat.ToString(CultureInfo.InvariantCulture),
            Column.Side => reading.Gate.Side.Word(),
            Column.Item => Vocabulary.Items.Word(reading.Item),
            Column.At => reading.Item == ReadItem.Gate ? Point(reading.At) : "",
            Column.Reading => Number(reading.Value),
            Column.Lie => reading.Lie.Lie.Word(),
            Column.BowHigh => bowHigh,
            Column.PortLow => portLow,
            Column.Gauge => reading.Gauge.Name == ReadingsFormat.UnnamedGauge ? "" : NameText.Shielded(reading.Gauge.Name),
            Column.Date => Day(reading.Lie.Date),
            Column.Rack => reading.Lie.Level is HullLevel.OfRack { Rack: var rack } ? NameText.Shielded(rack.Name) : "",
            Column.Lying => _lyings.Mark(boat, reading.Lie),
            _ => "",
        });
    }

    private void Write(Func<Column, string> cell)
    {
        foreach (Column column in Columns)
        {
            _row.Cell(cell(column));
        }

        _row.End();
    }

    private static (string BowHigh, string PortLow) Level(HullLevel level, bool saysLevel) => level switch
    {
        HullLevel.Read { Attitude: var read } => (Number(read.BowHigh.Angle), Number(read.PortLow.Angle)),
        HullLevel.BubbleCentred => Both(LevelSource.Bubble),
        HullLevel.OfRack => saysLevel ? Both(LevelSource.Rack) : ("", ""),
        _ => saysLevel ? Both(LevelSource.Eye) : ("", ""),
    };

    private static (string BowHigh, string PortLow) Both(LevelSource source) =>
        (Vocabulary.Levels.Word(source), Vocabulary.Levels.Word(source));

    private static string Point(StrokePoint at) => at.Station?.Word() ?? Number(at.Angle.Angle);

    private static string Number(Angle angle) => angle.Degrees.ToString("R", CultureInfo.InvariantCulture);

    private static string Day(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
