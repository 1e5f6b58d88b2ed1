using Gatewright.Core;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Exchange;

/// <summary>Reads the rows under a header: readings, levels of racks, what was told, measures of the rig, and the notes beside either.</summary>
internal sealed class DataRow(RowCells cells, Reporter report, Shed shed, char separator)
{
    private readonly SlippedRow _slipped = new(cells, report, separator);
    private readonly ReadingRow _reading = new(cells, report, shed);
    private readonly ToldRow _told = new(cells, report, shed);
    private readonly MeasureRow _measure = new(cells, report, shed);
    private readonly RackLevelRow _rackLevel = new(cells, report, shed);

    public void Read()
    {
        if (_slipped.IsMet())
        {
            return;
        }

        if (CellText.SameName(cells[Column.Item], Vocabulary.Level))
        {
            if (_rackLevel.Read() is string rack)
            {
                Note(null, null, rack);
            }
        }
        else if (ToldRow.IsMet(cells[Column.Item]))
        {
            if (_told.Read() is (string told, var of))
            {
                Note(told, of, null);
            }
        }
        else if (Vocabulary.Measures.Find(cells[Column.Item]) is { } measure)
        {
            if (_measure.Read(measure) is (string measured, RigPlace at))
            {
                Note(measured, at.Side is { } side ? new GatePlace(at.Seat, side) : null, null);
            }
        }
        else if (_reading.Read() is (string boat, GatePlace gate))
        {
            Note(boat, gate, null);
        }
    }

    private void Note(string? boat, GatePlace? gate, string? rack)
    {
        if (!cells[Column.Note].IsEmpty)
        {
            shed.Note(new(boat, gate, cells[Column.Note].ToString(), rack));
        }

        for (int i = 0; i < cells.Map.Foreign.Count; i++)
        {
            (int index, string name) = cells.Map.Foreign[i];
            if (!cells.At(index).IsEmpty)
            {
                string column = name.Length > 0 ? name : FormattableString.Invariant($"column {index + 1}");
                shed.Note(new(boat, gate, $"{column}: {cells.At(index)}", rack));
            }
        }
    }
}
