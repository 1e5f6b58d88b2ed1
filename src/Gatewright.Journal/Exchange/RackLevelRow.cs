using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>Reads a row that states how a rack lies.</summary>
internal sealed class RackLevelRow(RowCells cells, Reporter report, Shed shed)
{
    private readonly LevelCells _level = new(cells, report);
    private readonly PlaceCells _place = new(cells, report);

    /// <returns>The rack's name, or null when there was an error.</returns>
    public string? Read()
    {
        bool isOfARack = IsOfARack();
        bool hasName = _place.HasName(Column.Rack, true, "the name of the rack whose level this row states");
        HullAttitude? attitude = _level.OfRack();
        Bedding? bed = _place.Bed();
        bool hasDate = _place.TryDate(out DateOnly? day);
        if (!hasName || !shed.ComparesRows)
        {
            return null;
        }

        RackRows rack = shed.Racks.Named(cells[Column.Rack]);
        if (!isOfARack || !hasDate || attitude is null || bed is null)
        {
            rack.IsFaulty = true;
            return null;
        }

        Add(rack, new(rack.Name, attitude.Value, bed.Value, day));
        return rack.Name;
    }

    private bool IsOfARack()
    {
        foreach (Column column in (ReadOnlySpan<Column>)
            [Column.Boat, Column.Class, Column.Seat, Column.Side, Column.At, Column.Reading])
        {
            if (!cells[column].IsEmpty)
            {
                report.NotOfARack(column, cells[column]);
                return false;
            }
        }

        return true;
    }

    private void Add(RackRows rows, Rack rack)
    {
        if (rows.Contradicts(rack, report.Place) is (Rack before, RowPlace place))
        {
            report.RackTwice(rack, before, place);
        }
    }
}
