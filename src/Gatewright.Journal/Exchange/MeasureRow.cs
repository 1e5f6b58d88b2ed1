using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange.Recording;

namespace Gatewright.Journal.Exchange;

/// <summary>Reads a row that holds a measure of the rig.</summary>
internal sealed class MeasureRow(RowCells cells, Reporter report, Shed shed)
{
    private readonly GateCells _gate = new(cells, report, shed.Settings);
    private readonly PlaceCells _place = new(cells, report);

    /// <returns>The boat's name and the place, or null when there was an error.</returns>
    public (string Boat, RigPlace Place)? Read(RigMeasure measure)
    {
        bool hasBoat = _place.HasName(Column.Boat, true, "the boat's name, in every row");
        BoatClass? boatClass = _gate.Class();
        int? seat = _gate.Seat(boatClass);
        bool hasSide = TrySide(measure, out Side? side);
        RigUnit? unit = Unit(measure);
        double? value = unit is { } known ? Value(measure, known) : null;
        bool hasDate = _place.TryDate(out DateOnly? day);
        bool isAlone = IsAlone(measure) & (_place.Lie() is not null);
        bool isOfTheClass = boatClass is null || IsOf(measure, boatClass);
        if (!hasBoat || !shed.ComparesRows)
        {
            return null;
        }

        BoatRows boat = shed.Boats.Named(cells[Column.Boat]);
        GatePlace? gate = seat is { } s && side is { } d ? new(s, d) : null;
        bool agrees = ReadingRow.Agrees(boat, boatClass, gate, cells, report);
        if (!agrees || seat is null || !hasSide || unit is null || value is null || !hasDate || !isAlone || !isOfTheClass)
        {
            return null;
        }

        var place = new RigPlace(seat.Value, measure.HasSide() ? side : null);
        if (shed.KeepsReadings)
        {
            boat.Measured(new(
                new(measure, place, unit.Value.InOwn(value.Value), day), ReadingsPen.Number(value.Value), unit.Value, side));
        }

        return (boat.Name, place);
    }

    /// <summary>The side of a gate or an oar; of a seat's measure it may be left out.</summary>
    private bool TrySide(RigMeasure measure, out Side? side)
    {
        side = null;
        if (!measure.HasSide() && cells[Column.Side].IsEmpty)
        {
            return true;
        }

        side = _gate.Side();
        return side is not null;
    }

    private RigUnit? Unit(RigMeasure measure)
    {
        ReadOnlySpan<char> text = cells[Column.Unit];
        if (text.IsEmpty)
        {
            return measure.Unit();
        }

        if (RigUnits.OfWord(text) is { } unit && measure.Takes(unit))
        {
            return unit;
        }

        report.NoUnit(text, measure);
        return null;
    }

    private double? Value(RigMeasure measure, RigUnit unit)
    {
        ReadOnlySpan<char> text = cells[Column.Reading];
        if (text.IsEmpty)
        {
            report.BlankMeasure(measure);
            return null;
        }

        if (DegreesText.Find(text) is not double value)
        {
            report.NoMeasure(text, measure);
            return null;
        }

        (double least, double most) = measure.Plausible();
        double own = unit.InOwn(value);
        if (own >= least && own <= most)
        {
            return value;
        }

        report.MeasureNotPossible(text, measure, unit, value);
        return null;
    }

    /// <summary>What belongs to a reading of a gate stays blank: a figure there may have slipped out of its column.</summary>
    private bool IsAlone(RigMeasure measure)
    {
        bool isAlone = true;
        foreach (Column column in (ReadOnlySpan<Column>)[Column.At, Column.BowHigh, Column.PortLow, Column.Gauge, Column.Rack, Column.Bed, Column.Lying])
        {
            if (!cells[column].IsEmpty)
            {
                report.NotOfAMeasure(column, cells[column], measure);
                isAlone = false;
            }
        }

        return isAlone;
    }

    private bool IsOf(RigMeasure measure, BoatClass boatClass)
    {
        if (measure.IsOf(boatClass.Rowing))
        {
            return true;
        }

        report.MeasureOfOther(measure, boatClass);
        return false;
    }
}
