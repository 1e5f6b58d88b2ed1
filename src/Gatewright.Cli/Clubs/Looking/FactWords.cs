using Gatewright.Cli.Clubs.Telling;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Reporting;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Cli.Clubs.Looking;

/// <summary>What was recorded, in words.</summary>
internal static class FactWords
{
    /// <summary>What it says, who recorded it, and the day it was true.</summary>
    public static ToldFact Told(Recorded record) => new(record.Entry.Kind, Words(record.Fact).TrimEnd('.'), record.Entry.Member, Day.Of(record));

    /// <summary>"held: the bow ball is loose (lee, 2026-11-25)".</summary>
    public static string Sentence(ToldFact fact) => $"{fact.Words} ({fact.Member}, {Language.English.Day(fact.Day)})";

    private static string Words(Fact fact) => fact switch
    {
        Held held => $"held: {held.In(Language.English)}",
        Released released => $"hold lifted: {released.Reason}",
        Reported report => $"reported{Place(report.Seat, report.Side)}: {report.Kind.Code().Replace('-', ' ')}{(report.Text is { } text ? $", {text}" : string.Empty)}",
        JobPlanned job => $"job {job.Job} planned{Place(job.Seat, job.Side)}: {job.Remedy.Replace('-', ' ')}, for {job.Cause.Code().Replace('-', ' ')}",
        StepDone step => FormattableString.Invariant($"job {step.Job}, step {step.Step + 1} done"),
        JobDone done => $"job {done.Job} done; found: {(done.All.Count == 0 ? "nothing" : string.Join(" and ", done.All.Select(f => f.Code().Replace('-', ' '))))}",
        JobDropped dropped => $"job {dropped.Job} given up{(dropped.Reason is { } reason ? $": {reason}" : string.Empty)}",
        GateMended mended => $"mended{Place(mended.Seat, mended.Side)}",
        Noted note => $"note: {Damage.In(note, Wording.English)}",
        PhotoTaken photo => $"photo {photo.Sha256[..Math.Min(8, photo.Sha256.Length)]}",
        MeasureTaken measure => FormattableString.Invariant($"{measure.Measure}{Place(measure.Seat, measure.Side)}: {measure.Value} {measure.Unit}"),
        MeasureSet set => FormattableString.Invariant($"{set.Measure}{Place(set.Seat, set.Side)}: set to {set.Value} {set.Unit}, not measured"),
        ChangePlanned change => FormattableString.Invariant($"change {change.Job} planned: to {change.Rig}, {change.Steps.Count} steps"),
        OarRead read => FormattableString.Invariant($"{read.Item.Word()}: {read.Value} {OarUnit(read)}"),
        StockChanged stock => FormattableString.Invariant($"{stock.Part} {stock.Size}: {stock.Change:+0;-0;0}"),
        StockCounted stock => FormattableString.Invariant($"{stock.Part} {stock.Size}: {stock.Count} counted"),
        ReadingKept => "a reading that looked like a slip is kept",
        RackLevelRead level => FormattableString.Invariant($"level read: bow high {level.BowHigh}°, port low {level.PortLow}°"),
        GaugeReversed gauge => FormattableString.Invariant($"turned end for end: {gauge.First}°, then {gauge.Turned}°"),
        RoundStarted round => $"round {round.Round} began",
        RoundEnded round => $"round {round.Round} ended",
        _ => "something that a newer Gatewright recorded",
    };

    private static string OarUnit(OarRead read) => read.Item switch
    {
        OarItem.Sleeve => "deg",
        OarItem.Weight => "kg",
        _ => read.Unit ?? "cm",
    };

    private static string Place(int? seat, Side? side) => (seat, side) switch
    {
        (null, null) => string.Empty,
        (null, { } of) => $" to {of.Word()}",
        ({ } at, null) => FormattableString.Invariant($" at seat {at}"),
        ({ } at, { } of) => FormattableString.Invariant($" at seat {at} {of.Word()}"),
    };
}
