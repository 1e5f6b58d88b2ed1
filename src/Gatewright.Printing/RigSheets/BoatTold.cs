using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Words;
using Gatewright.Words.Judged;

namespace Gatewright.Printing.RigSheets;

/// <summary>What is said of a boat on paper.</summary>
internal sealed class BoatTold(Imprint imprint)
{
    private readonly Wording _say = imprint.Say;

    /// <summary>"Rack A2"; null while nobody knows.</summary>
    public string? Rack(Club club, BoatView boat) => BoatBerth.Of(boat).Rack is { } rack
        ? imprint.Texts["Sheet.Rack", new ThingTitles(club, Things.Rack)[rack]]
        : null;

    /// <summary>How many readings, how it lay, when, and by whom.</summary>
    public string Read(BoatView boat, BoatCheck check)
    {
        string how = imprint.Texts["Sheet.Read", _say.Levels.HowRead(check)];
        return Readers(boat) is { Length: > 0 } who ? $"{how} {imprint.Texts["Sheet.ReadBy", who]}" : how;
    }

    /// <summary>Why a boat is held, who says so, and since when.</summary>
    public string Hold(Recorded hold) =>
        imprint.Texts["Sheet.Hold", ((Held)hold.Fact).In(_say.Language), imprint.NameOf(hold.Entry.Member), _say.Language.Day(Day.Of(hold))];

    /// <summary>What keeps a boat off the water: what was read, or what was changed since.</summary>
    public IEnumerable<string> Cautions(BoatStanding boat)
    {
        if (boat.Check is { } check && _say.Cautions.For(check.Verdict) is { } caution)
        {
            yield return caution;
        }

        if (boat.Changed is { KeepAshore: true })
        {
            yield return _say.Cautions.ChangedUnread;
        }
    }

    /// <summary>Which gates were changed and not read since: when, and by what.</summary>
    public IEnumerable<string> Changed(BoatStanding boat) => (boat.Changed?.Changes ?? []).Select(_say.Boats.ReadAgain);

    /// <summary>A gate.</summary>
    public SheetGate Gate(Club club, BoatView boat, BoatCheck? check, GatePlace gate)
    {
        GateVerdict? verdict = check?.Verdict.Gates.FirstOrDefault(g => g.Gate == gate);
        return new(
            gate,
            verdict?.Verdict,
            verdict is null ? [] : [.. Stations.All.Select(station => Pitch(station, verdict.At(station)))],
            [.. Pin(club, boat, check?.Diagnosis.Gates.FirstOrDefault(g => g.Gate == gate), gate)]);
    }

    /// <summary>Why gates are not good, of each what weighs most and, where that is no floor, the first floor in doubt; which were not read, and what no verdict shows.</summary>
    public IEnumerable<string> Reasons(BoatCheck check)
    {
        foreach (GateVerdict gate in check.Verdict.Gates.Where(g => g.Verdict != Verdict.Good).OrderByDescending(g => g.Verdict))
        {
            Reason first = ReasonChoice.Of(gate, all: false)[0];
            Reason? floor = first.Kind == ReasonKind.Floor ? null : gate.Reasons.FirstOrDefault(r => r.Kind == ReasonKind.Floor);
            foreach (Reason reason in new[] { first, floor }.OfType<Reason>())
            {
                yield return $"{Sentence.Capital(_say.Names.Verdict(reason.Verdict))}: {_say.Reasons.Of(gate.Gate, reason, check.Verdict.Standard)}";
            }
        }

        if (check.Verdict.NotRead.Count > 0)
        {
            yield return imprint.Texts["Sheet.GatesNotRead", _say.Names.Gates(check.Verdict.NotRead)];
        }

        foreach (string notice in _say.Boats.Notices(check))
        {
            yield return Sentence.Capital(notice) + ".";
        }
    }

    /// <summary>What is open on the boat, the newest first; holds stand elsewhere.</summary>
    public IEnumerable<string> Open(BoatView boat)
    {
        foreach (Incident incident in BoatIncidents.Of(boat).Where(i => i.IsOpen))
        {
            string? what = incident.Record.Fact switch
            {
                Reported report => Report(report),
                JobPlanned => Job(boat.Jobs.First(j => ReferenceEquals(j.Planned, incident.Record))),
                _ => null,
            };
            if (what is not null)
            {
                yield return imprint.Texts["Sheet.Open", what, imprint.Who(incident.Record.Entry), _say.Language.Day(incident.Day)];
            }
        }
    }

    /// <summary>The changes of its rig that are under way.</summary>
    public IEnumerable<string> Changes(Club club, BoatView boat) =>
        from change in RigChanges.Of(club, boat.Key)
        where change.IsOpen(MeasuringSettings.Default)
        let what = imprint.Texts["Change.Under", change.Plan.Rig, change.StepsDone.Count, change.Plan.Steps.Count]
        select imprint.Texts["Sheet.Open", what, imprint.NameOf(change.Planned.Entry.Member), _say.Language.Day(Day.Of(change.Planned.Entry))];

    private string Report(Reported report)
    {
        string what = Sentence.Capital(_say.Names.Report(new Report(
            report.Kind,
            report is { Seat: { } seat, Side: { } side } ? new GatePlace(seat, side) : null,
            report.Kind == ReportKind.DownToOneSide ? report.Side : null)));
        return report.Text is { Length: > 0 } words ? $"{what}: {words}" : what;
    }

    private string Job(JobView job)
    {
        string cause = Sentence.Capital(_say.Causes.Some(new(job.Plan.Cause, job.Gate)));
        string remedies = string.Join(", ", JobCautions.Remedies(job).Select(_say.Names.Remedy));
        return remedies.Length == 0 ? imprint.Texts["Sheet.Job", cause] : imprint.Texts["Sheet.JobBy", cause, remedies];
    }

    private SheetPitch Pitch(Station station, StationPitch pitch) => new(
        station, _say.Figures.Degrees(pitch.Pitch.Value.Degrees), _say.Figures.Degrees(pitch.Pitch.U.Degrees), pitch.Read);

    private IEnumerable<string> Pin(Club club, BoatView boat, GateDiagnosis? diagnosis, GatePlace gate)
    {
        if (diagnosis is not null)
        {
            yield return imprint.Texts["Pin.Probably"];
            yield return Lean(diagnosis.LeanAft, "Pin.Aft", "Pin.Forward");
            yield return Lean(diagnosis.LeanOut, "Pin.Out", "Pin.In");
        }

        string key = Things.GateKey(boat.Key, gate);
        if (new ThingView(club, Things.Gate, key)["insert"] is { } insert
            && double.TryParse(insert, CultureInfo.InvariantCulture, out double degrees))
        {
            yield return imprint.Texts["Pin.Insert", _say.Figures.Brief(degrees)];
        }
    }

    /// <summary>A lean with its direction in a word: whoever holds the sheet knows no sign.</summary>
    private string Lean(Estimate lean, string positive, string negative) =>
        Math.Round(lean.Value.Degrees, 1, MidpointRounding.AwayFromZero) < 0
            ? imprint.Texts[negative, _say.Figures.Bare(lean with { Value = -lean.Value })]
            : imprint.Texts[positive, _say.Figures.Bare(lean)];

    /// <summary>Whoever took the readings of the last day, by name.</summary>
    private string Readers(BoatView boat)
    {
        List<Recorded> readings = [.. boat.Records.Where(r => r.Fact is ReadingTaken)];
        if (readings.Count == 0)
        {
            return string.Empty;
        }

        DateOnly last = readings.Max(r => Day.Of(r.Entry));
        return string.Join(", ", readings.Where(r => Day.Of(r.Entry) == last).Select(r => imprint.NameOf(r.Entry.Member)).Distinct().Order(StringComparer.Ordinal));
    }
}
