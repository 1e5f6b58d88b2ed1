using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Exchange;

/// <summary>Reads a row that holds a reading.</summary>
internal sealed class ReadingRow(RowCells cells, Reporter report, Shed shed)
{
    private readonly GateCells _gate = new(cells, report, shed.Settings);
    private readonly LevelCells _level = new(cells, report);
    private readonly PlaceCells _place = new(cells, report);

    /// <returns>The boat's name and the gate, or null when there was an error.</returns>
    public (string Boat, GatePlace Gate)? Read()
    {
        bool hasBoat = _place.HasName(Column.Boat, true, "the boat's name, in every row");
        BoatClass? boatClass = _gate.Class();
        int? seat = _gate.Seat(boatClass);
        Side? side = _gate.Side();
        ReadItem? item = _gate.Item();
        StrokePoint? at = item is ReadItem i ? _gate.At(i, boatClass) : null;
        Angle? value = _gate.Reading(item);
        LyingKey? lying = ReadLying();
        bool hasGauge = _place.HasName(Column.Gauge, false, "");
        bool isInDegrees = IsInDegrees();
        if (!hasBoat || !shed.ComparesRows)
        {
            return null;
        }

        BoatRows boat = shed.Boats.Named(cells[Column.Boat]);
        GatePlace? gate = seat is int s && side is Side d ? new(s, d) : null;
        bool agrees = Agrees(boat, boatClass, gate, cells, report);
        Lying? rows = lying is LyingKey key ? boat.LyingOf(key, report.Place) : null;
        if (!agrees || !hasGauge || !isInDegrees || rows is null || gate is null || item is null || at is null || value is null)
        {
            return null;
        }

        if (shed.KeepsReadings)
        {
            boat.Add(new(item.Value, gate.Value, at.Value, value.Value, rows, Gauge()));
        }

        return (boat.Name, gate.Value);
    }

    /// <summary>A gauge shows degrees: another unit belongs to a measure of the rig, and then the item is wrong.</summary>
    private bool IsInDegrees()
    {
        ReadOnlySpan<char> text = cells[Column.Unit];
        if (text.IsEmpty || RigUnits.OfWord(text) == RigUnit.Degrees)
        {
            return true;
        }

        report.UnitOfAReading(text);
        return false;
    }

    private LyingKey? ReadLying()
    {
        Lie? lie = _place.Lie();
        LevelStatement? level = _level.OfBoat();
        bool hasDate = _place.TryDate(out DateOnly? day);
        bool hasRack = _place.HasName(Column.Rack, false, "");
        bool hasMark = _place.HasName(Column.Lying, false, "");
        if (!cells[Column.Bed].IsEmpty)
        {
            report.BedOfABoat(cells[Column.Bed]);
        }

        if (lie is null || level is null || !hasDate || !hasRack || !hasMark || !shed.ComparesRows)
        {
            return null;
        }

        ReadOnlySpan<char> rack = cells[Column.Rack];
        ReadOnlySpan<char> mark = cells[Column.Lying];
        return new(lie.Value, day, level.Value, rack.IsEmpty ? null : shed.Racks.Named(rack), mark.IsEmpty ? null : NameText.Key(NameText.Tidy(mark)));
    }

    /// <summary>Whether a row's class and side are those of the boat's other rows; reports where they are not.</summary>
    internal static bool Agrees(
        BoatRows boat, BoatClass? boatClass, GatePlace? gate, RowCells cells, Reporter report)
    {
        if (boatClass is null)
        {
            return false;
        }

        if (!boat.Agrees(boatClass, report.Place))
        {
            report.OtherClass(cells[Column.Class], boat);
            return false;
        }

        if (gate is GatePlace place && boat.Contradicts(place, report.Place) is RowPlace first)
        {
            report.OtherSide(place, boat, first);
            return false;
        }

        return true;
    }

    private Gauge Gauge()
    {
        ReadOnlySpan<char> name = cells[Column.Gauge];
        return shed.Gauges.Named(name.IsEmpty ? ReadingsFormat.UnnamedGauge : name);
    }
}
