using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Exchange.Sheets;

/// <summary>A club as tables for a spreadsheet: docs/club-tables.md. What they leave out stands in the club's file.</summary>
public static class ClubCsv
{
    private const string DayFormat = "yyyy-MM-dd";

    /// <summary>The tables. That of readings is a file of readings, that of stores one of stores: the program reads both.</summary>
    public static IReadOnlyList<ClubTable> Tables { get; } =
    [
        new("boats.csv", Boats),
        new("readings.csv", Readings),
        new("jobs.csv", Jobs),
        new("reports.csv", Reports),
        new("stores.csv", Stores),
        new("oars.csv", OarsSheet.Write),
        new("notes.csv", Notes),
    ];

    private static void Boats(Club club, TextWriter to)
    {
        var row = new CsvRow(to);
        var racks = new ThingTitles(club, Things.Rack);
        Write(row, "key", "boat", "class", "rack", "lie", "standard", "out_of_use", "holds", "open_jobs", "crew");
        foreach ((BoatView boat, string title) in All(club))
        {
            string? rack = boat.Properties["rack"];
            Write(
                row,
                Text(boat.Key),
                Text(title),
                boat.Class?.Name ?? "",
                Text(rack is null ? null : racks[rack]),
                Text(boat.Properties["lie"]),
                Text(boat.Properties["standard"]),
                Text(boat.Properties["out-of-use"]),
                Number(boat.Holds.Count),
                Number(boat.Jobs.Count(j => j.IsOpen)),
                Text(boat.Properties["crew"]));
        }
    }

    /// <summary>
    /// What the verdicts rest on: each boat's readings since its gates were last changed, what is told of it, and its rig as it
    /// was last measured.
    /// </summary>
    private static void Readings(Club club, TextWriter to)
    {
        List<BoatRecord> records = [];
        List<BoatMeasures> measures = [];
        foreach ((BoatView boat, string title) in All(club))
        {
            if (boat.Record(MeasuringSettings.Default) is { } record)
            {
                records.Add(record with { Current = record.Current with { Boat = title } });
                RigView rig = new(club, boat);
                if (rig.Current.Count > 0)
                {
                    measures.Add(new(title, record.Current.Class, [.. rig.Current.Select(t => t.Written)]));
                }
            }
        }

        ReadingsCsv.Write(to, records, measures);
    }

    private static void Jobs(Club club, TextWriter to)
    {
        var row = new CsvRow(to);
        Write(row, "job", "boat", "seat", "side", "cause", "remedy", "planned", "state", "done", "found", "steps", "parts");
        foreach ((BoatView boat, string title) in All(club))
        {
            foreach (JobView job in boat.Jobs)
            {
                Write(
                    row,
                    Text(job.Plan.Job),
                    Text(title),
                    Number(job.Plan.Seat),
                    job.Plan.Side?.Word() ?? "",
                    job.Plan.Cause.Code(),
                    Text(job.Plan.Remedy),
                    Day(Views.Day.Of(job.Planned)),
                    job.IsDone ? "done" : job.IsDropped ? "dropped" : "open",
                    Day(job.DoneOn),
                    string.Join(JobPlan.Both, job.Found.Select(f => f.Code())),
                    Text(string.Join("; ", job.Plan.Steps)),
                    Text(string.Join("; ", job.Plan.Parts.Select(p => FormattableString.Invariant($"{p.Count} × {p.Part} {p.Size}")))));
            }
        }
    }

    private static void Reports(Club club, TextWriter to)
    {
        var row = new CsvRow(to);
        Write(row, "boat", "seat", "side", "what", "day", "member", "text");
        foreach ((BoatView boat, string title) in All(club))
        {
            foreach (Recorded record in boat.Records)
            {
                if (record.Fact is Reported report)
                {
                    string day = Day(Views.Day.Of(record));
                    Write(row, Text(title), Number(report.Seat), report.Side?.Word() ?? "", report.Kind.Code(), day, Text(record.Entry.Member), Text(report.Text));
                }
            }
        }
    }

    /// <summary>A shelf that went below nothing is written as bare, with a note: a file of stores has no negative counts.</summary>
    private static void Stores(Club club, TextWriter to)
    {
        var row = new CsvRow(to);
        Write(row, "part", "size", "count", "note");
        foreach (((string part, decimal size), int count) in StoresView.Of(club).OrderBy(s => s.Key.Part, StringComparer.Ordinal).ThenBy(s => s.Key.Size))
        {
            string note = count < 0 ? string.Create(CultureInfo.InvariantCulture, $"{-count} more went out than came in: count the shelf") : "";
            Write(row, Text(part), size.ToString(CultureInfo.InvariantCulture), Number(Math.Max(count, 0)), note);
        }
    }

    private static void Notes(Club club, TextWriter to)
    {
        var row = new CsvRow(to);
        Write(row, "thing", "key", "day", "member", "text");
        foreach (Subject subject in club.Subjects.OrderBy(s => s.Thing, StringComparer.Ordinal).ThenBy(s => s.Key, StringComparer.Ordinal))
        {
            foreach (Recorded record in club.About(subject))
            {
                if (record.Fact is Noted note)
                {
                    Write(row, Text(note.Thing), Text(note.Key), Day(Views.Day.Of(record)), Text(record.Entry.Member), Text(note.Text));
                }
            }
        }
    }

    /// <summary>Every boat with a title of its own, by title.</summary>
    private static IEnumerable<(BoatView Boat, string Title)> All(Club club)
    {
        var titles = new ThingTitles(club, Things.Boat);
        return club.Subjects.Where(s => s.Thing == Things.Boat)
            .Select(s => (new BoatView(club, s.Key), titles[s.Key]))
            .OrderBy(b => b.Item2, StringComparer.Ordinal);
    }

    private static void Write(CsvRow row, params ReadOnlySpan<string> cells)
    {
        foreach (string cell in cells)
        {
            row.Cell(cell);
        }

        row.End();
    }

    private static string Text(string? text) => SheetText.Shielded(text ?? "");

    private static string Number(int? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static string Day(DateOnly? day) => day?.ToString(DayFormat, CultureInfo.InvariantCulture) ?? "";
}
