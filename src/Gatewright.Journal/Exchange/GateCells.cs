using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>The cells that say which gate was read, where, and what the gauge showed. Each answers null when it has reported an error.</summary>
internal sealed class GateCells(RowCells cells, Reporter report, MeasuringSettings settings)
{
    public const int MostSeats = 8;

    private const int MostAngle = 90;

    private bool _saidNoPointColumn;
    private BoatClass? _lastClass;

    public BoatClass? Class()
    {
        ReadOnlySpan<char> text = cells[Column.Class];
        if (text.IsEmpty)
        {
            report.Blank(Column.Class, Vocabulary.Classes);
            return null;
        }

        // Rows of one boat follow one another.
        if (_lastClass is not null && text.SequenceEqual(_lastClass.Name))
        {
            return _lastClass;
        }

        _lastClass = ClassText.Find(text, out bool isTurned);
        if (_lastClass is null)
        {
            report.NoClass(text);
        }
        else if (isTurned)
        {
            report.ClassTurned(text, _lastClass);
        }

        return _lastClass;
    }

    public int? Seat(BoatClass? boat)
    {
        ReadOnlySpan<char> text = cells[Column.Seat];
        if (text.IsEmpty)
        {
            report.Blank(Column.Seat, "the seat's number, 1 at the bow");
            return null;
        }

        double number = DegreesText.Find(text) ?? 0;
        if (number >= 1 && number <= (boat?.Seats ?? MostSeats) && number == Math.Floor(number))
        {
            return (int)number;
        }

        report.NoSeat(text, boat);
        return null;
    }

    public Side? Side()
    {
        ReadOnlySpan<char> text = cells[Column.Side];
        if (text.IsEmpty)
        {
            report.Blank(Column.Side, Vocabulary.Sides.Choice);
            return null;
        }

        Side? side = Vocabulary.Sides.Find(text);
        if (side is null)
        {
            report.NoSide(text);
        }

        return side;
    }

    public ReadItem? Item()
    {
        ReadOnlySpan<char> text = cells[Column.Item];
        ReadItem? item = text.IsEmpty ? ReadItem.Gate : Vocabulary.Items.Find(text);
        if (item is null)
        {
            report.NoItem(text);
        }

        return item;
    }

    public StrokePoint? At(ReadItem item, BoatClass? boat)
    {
        ReadOnlySpan<char> text = cells[Column.At];
        if (text.IsEmpty && item == ReadItem.Gate)
        {
            ReportNoPoint();
            return null;
        }

        StrokePoint? point = text.IsEmpty ? Angles(boat).Point(Station.Abeam) : Point(text, Angles(boat));
        if (point is null)
        {
            report.NoPoint(text);
        }
        else if (item != ReadItem.Gate && point.Value.Station != Station.Abeam)
        {
            report.PointOfOther(text, item);
            return null;
        }

        return point;
    }

    public Angle? Reading(ReadItem? item)
    {
        ReadOnlySpan<char> text = cells[Column.Reading];
        if (text.IsEmpty)
        {
            report.Blank(Column.Reading, "degrees, such as 4.5; leave the row out if it was not read");
            return null;
        }

        if (DegreesText.Find(text) is not double degrees)
        {
            report.NoReading(text);
            return null;
        }

        int most = item == ReadItem.Gate ? ReadingsFormat.MostOfAGate : ReadingsFormat.MostOfAnother;
        if (Math.Abs(degrees) <= most)
        {
            return Angle.FromDegrees(degrees);
        }

        report.ReadingTooLarge(text, degrees, most);
        return null;
    }

    private void ReportNoPoint()
    {
        if (cells.Map.Has(Column.At))
        {
            report.Blank(Column.At, Vocabulary.Points);
        }
        else if (!_saidNoPointColumn)
        {
            _saidNoPointColumn = true;
            report.NoPointColumn();
        }
    }

    /// <summary>Of a boat whose class is not known only the words and the range are looked at: what it is does not count.</summary>
    private StationAngles Angles(BoatClass? boat) => settings.Angles(boat?.Rowing ?? Rowing.Sweep);

    private static StrokePoint? Point(ReadOnlySpan<char> text, StationAngles angles)
    {
        if (Vocabulary.Stations.Find(text) is Station station)
        {
            return angles.Point(station);
        }

        return DegreesText.Find(text) is double degrees && Math.Abs(degrees) <= MostAngle
            ? angles.Point(OarAngle.FromDegrees(degrees))
            : null;
    }
}
