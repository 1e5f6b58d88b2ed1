using Gatewright.Core;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Exchange.JobsFiles;

/// <summary>The cells of a row of jobs. Each answers null when it has reported an error.</summary>
internal sealed class JobsCells(RowFields fields, TableColumns columns, Reporter report)
{
    /// <summary>What was found; empty for nothing, null when it has reported an error.</summary>
    public IReadOnlyList<Cause>? Found()
    {
        ReadOnlySpan<char> text = fields[columns[JobsFormat.Found]];
        if (text.IsEmpty)
        {
            report.BlankCell("found", $"what was found, {JobsMessages.Found}");
            return null;
        }

        if (CellText.SameName(text, Causes.NoneCode))
        {
            return [];
        }

        IReadOnlyList<Cause>? found = JobsFormat.CausesOf(text);
        if (found is null)
        {
            report.NoFinding(text);
        }

        return found;
    }

    /// <summary>What was checked, as the row says, or as what was found and whether there is a seat tell.</summary>
    public CheckedKind? Kind(IReadOnlyList<Cause>? found)
    {
        ReadOnlySpan<char> text = fields[columns[JobsFormat.Checked]];
        if (!text.IsEmpty)
        {
            CheckedKind? kind = JobsFormat.Kinds.Find(text);
            if (kind is null)
            {
                report.NoKind(text);
            }

            return kind;
        }

        if (found is { Count: > 0 })
        {
            return CheckedKinds.In(found[0]);
        }

        if (!fields[columns[JobsFormat.Seat]].IsEmpty)
        {
            return CheckedKind.Gate;
        }

        if (found is not null)
        {
            report.BlankCell("checked", $"what nothing was found in, {JobsFormat.Kinds.Choice}; blank is gate where there is a seat");
        }

        return null;
    }

    public DateOnly? Day()
    {
        ReadOnlySpan<char> text = fields[columns[JobsFormat.Date]];
        if (text.IsEmpty)
        {
            report.BlankCell("date", "the day, such as 2026-05-02: a job that is told again is known by it");
            return null;
        }

        DateOnly? day = DateText.Find(text);
        if (day is null)
        {
            report.NoDay(text);
        }

        return day;
    }

    public string? Boat() => Name(JobsFormat.Boat, "the boat's name");

    /// <summary>The gauge; where none is named, the only one.</summary>
    public string? Gauge() => fields[columns[JobsFormat.Gauge]].IsEmpty ? JobsFormat.OnlyGauge : Name(JobsFormat.Gauge, "the gauge's name");

    public BoatClass? Class()
    {
        ReadOnlySpan<char> text = fields[columns[JobsFormat.Class]];
        if (text.IsEmpty)
        {
            report.BlankCell("class", Vocabulary.Classes);
            return null;
        }

        BoatClass? found = ClassText.Find(text, out bool isTurned);
        if (found is null)
        {
            report.NoClass(text);
        }
        else if (isTurned)
        {
            report.ClassTurned(text, found);
        }

        return found;
    }

    public int? Seat(BoatClass? boat)
    {
        ReadOnlySpan<char> text = fields[columns[JobsFormat.Seat]];
        if (text.IsEmpty)
        {
            report.BlankCell("seat", "the seat's number, 1 at the bow");
            return null;
        }

        double number = DegreesText.Find(text) ?? 0;
        if (number >= 1 && number <= (boat?.Seats ?? GateCells.MostSeats) && number == Math.Floor(number))
        {
            return (int)number;
        }

        report.NoSeat(text, boat);
        return null;
    }

    public Side? Side()
    {
        ReadOnlySpan<char> text = fields[columns[JobsFormat.Side]];
        if (text.IsEmpty)
        {
            report.BlankCell("side", Vocabulary.Sides.Choice);
            return null;
        }

        Side? side = Vocabulary.Sides.Find(text);
        if (side is null)
        {
            report.NoSide(text);
        }

        return side;
    }

    private string? Name(int column, string expected)
    {
        ReadOnlySpan<char> text = fields[columns[column]];
        string name = JobsFormat.Columns[column].Name;
        if (text.IsEmpty)
        {
            report.BlankCell(name, expected);
            return null;
        }

        if (text.Length > NameText.Longest || NameText.HasHiddenCharacters(text))
        {
            report.NoName(name, text);
            return null;
        }

        return NameText.Tidy(text);
    }
}
