using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>Reads a row under the header: one thing checked.</summary>
internal sealed class JobsRow(RowFields fields, TableColumns columns, Reporter report)
{
    private readonly JobsCells _cells = new(fields, columns, report);

    /// <summary>The job, or null when there is something wrong with the row, which was reported.</summary>
    public FinishedJob? Read()
    {
        if (fields.CountUsed > columns.Count)
        {
            report.TooManyCells(fields[fields.CountUsed - 1], fields.CountUsed, columns.Count);
            return null;
        }

        IReadOnlyList<Cause>? found = _cells.Found();
        DateOnly? day = _cells.Day();
        CheckedKind? kind = _cells.Kind(found);
        CheckedThing? thing = kind is { } known ? Thing(known) : null;
        if (kind is { } one && found is not null)
        {
            foreach (Cause cause in found.Where(c => CheckedKinds.In(c) != one))
            {
                report.NotFoundThere(cause, one);
                return null;
            }
        }

        return found is not null && day is { } d && thing is not null ? FinishedJob.Of(thing, d, found) : null;
    }

    private CheckedThing? Thing(CheckedKind kind) => kind switch
    {
        CheckedKind.Gate => AtGate() is (string boat, BoatClass boatClass, GatePlace gate) ? new CheckedThing.OfGate(boat, boatClass, gate) : null,
        CheckedKind.Oar => AtGate() is (string boat, BoatClass boatClass, GatePlace gate) ? new CheckedThing.OfOar(boat, boatClass, gate) : null,
        CheckedKind.Level => OfTheBoat(kind) && _cells.Boat() is { } boat ? new CheckedThing.OfLevel(boat) : null,
        _ => OfTheBoat(kind) && _cells.Gauge() is { } gauge ? new CheckedThing.OfGauge(gauge) : null,
    };

    private (string Boat, BoatClass Class, GatePlace Gate)? AtGate()
    {
        string? boat = _cells.Boat();
        BoatClass? boatClass = _cells.Class();
        int? seat = _cells.Seat(boatClass);
        Side? side = _cells.Side();
        return boat is not null && boatClass is not null && seat is { } s && side is { } d ? (boat, boatClass, new(s, d)) : null;
    }

    /// <returns>Whether the row names no gate.</returns>
    private bool OfTheBoat(CheckedKind kind)
    {
        bool isSo = true;
        foreach (int column in (int[])[JobsFormat.Seat, JobsFormat.Side])
        {
            if (!fields[columns[column]].IsEmpty)
            {
                report.NoGateOf(JobsFormat.Columns[column].Name, fields[columns[column]], kind);
                isSo = false;
            }
        }

        return isSo;
    }
}
