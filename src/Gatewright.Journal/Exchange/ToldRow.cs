using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Exchange;

/// <summary>Reads a row that holds no reading but what was told of a boat: a knock, a crab, that a gate was mended.</summary>
internal sealed class ToldRow(RowCells cells, Reporter report, Shed shed)
{
    private readonly GateCells _gate = new(cells, report, shed.Settings);
    private readonly PlaceCells _place = new(cells, report);

    /// <summary>Whether a row is one of these.</summary>
    public static bool IsMet(ReadOnlySpan<char> item) =>
        CellText.SameName(item, Vocabulary.Mended) || Vocabulary.Told.Find(item) is not null;

    /// <returns>The boat's name and the gate, or null when there was an error.</returns>
    public (string Boat, GatePlace? Gate)? Read()
    {
        ReportKind? kind = Vocabulary.Told.Find(cells[Column.Item]);
        bool isOfTheBoat = kind == ReportKind.DownToOneSide;
        bool hasBoat = _place.HasName(Column.Boat, true, "the boat's name, in every row");
        BoatClass? boatClass = _gate.Class();
        int? seat = isOfTheBoat ? NoSeat() : _gate.Seat(boatClass);
        Side? side = _gate.Side();
        bool hasDate = _place.TryDate(out DateOnly? day);
        bool isNoReading = IsNoReading();
        if (!hasBoat || !shed.ComparesRows)
        {
            return null;
        }

        BoatRows boat = shed.Boats.Named(cells[Column.Boat]);
        if (boatClass is null || seat is null || side is null || !hasDate || !isNoReading)
        {
            return null;
        }

        GatePlace? gate = isOfTheBoat ? null : new(seat.Value, side.Value);
        if (!ReadingRow.Agrees(boat, boatClass, gate, cells, report))
        {
            return null;
        }

        if (kind is { } told)
        {
            boat.Told(new Report(told, gate, isOfTheBoat ? side : null, day));
        }
        else
        {
            boat.Told(new Mended(gate!.Value, day));
        }

        return (boat.Name, gate);
    }

    /// <summary>A boat sits down to one side as a whole: a seat in that row is a slip.</summary>
    private int? NoSeat()
    {
        ReadOnlySpan<char> text = cells[Column.Seat];
        if (text.IsEmpty)
        {
            return 0;
        }

        report.SeatOfTheBoat(text);
        return null;
    }

    private bool IsNoReading()
    {
        bool isBlank = true;
        foreach (Column column in (ReadOnlySpan<Column>)[Column.At, Column.Reading])
        {
            if (!cells[column].IsEmpty)
            {
                report.NotTold(column, cells[column], cells[Column.Item]);
                isBlank = false;
            }
        }

        return isBlank;
    }
}
