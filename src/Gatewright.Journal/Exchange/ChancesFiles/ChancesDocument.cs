using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.ChancesFiles;

/// <summary>A table of chances as written; docs/chances.md says what each key means.</summary>
internal sealed record ChancesDocument(
    string Format, ChancesPart Chances, WeightsPart Weights, ReportsPart Reports, IReadOnlyList<JobPart> Jobs)
{
    private static readonly ChancesJsonContext s_context = new(WrittenJson.Options(JsonIgnoreCondition.WhenWritingNull));

    public static ChancesDocument Of(ClubChances table)
    {
        PriorChances chances = table.Before;
        ReportLikelihoods reports = table.Reports;
        return new(
            ChancesFile.Format,
            new(chances.GatePitch, chances.PinAft, chances.PinOut, chances.Rigger, chances.WrongSeat, chances.Sleeve, chances.HullLevel, chances.GaugeZero),
            new(chances.GatesBehind, chances.OarsBehind, chances.BoatsBehind, chances.GaugesBehind),
            new(
                new(reports.KnockBase, reports.KnockIfRigger, reports.KnockIfPin),
                new(reports.RefittedBase, reports.RefittedIfRigger, reports.RefittedIfPin),
                CurvePart.Of(reports.CrabEarly),
                CurvePart.Of(reports.CrabAtFinish),
                CurvePart.Of(reports.WashesOut),
                CurvePart.Of(reports.DownToOneSide)),
            [.. table.Jobs.Jobs.Select(JobPart.Of)]);
    }

    public string Text() => JsonSerializer.Serialize(this, s_context.ChancesDocument);
}

/// <summary>How often each cause is met.</summary>
internal sealed record ChancesPart(
    double GatePitch, double PinAft, double PinOut, double Rigger, double WrongSeat, double Sleeve, double HullLevel, double GaugeZero);

/// <summary>As how many checks they count.</summary>
internal sealed record WeightsPart(double Gates, double Oars, double Boats, double Gauges);

/// <summary>How likely each report is.</summary>
internal sealed record ReportsPart(
    MovedPart Knock, MovedPart Refitted, CurvePart CrabEarly, CurvePart CrabAtFinish, CurvePart WashesOut, CurvePart DownToOneSide);

/// <summary>A report of what may have moved.</summary>
internal sealed record MovedPart(double Base, double Rigger, double Pin);

/// <summary>A report that follows a pitch.</summary>
internal sealed record CurvePart(double Threshold, double Width, double Base, double Peak)
{
    public static CurvePart Of(ReportCurve curve) => new(curve.ThresholdDegrees, curve.WidthDegrees, curve.Base, curve.Peak);
}

/// <summary>A finished job; what does not belong to it is left out.</summary>
internal sealed record JobPart(
    string Checked, string? Boat, string? Class, int? Seat, string? Side, string? Gauge, string Date, string Found)
{
    public static JobPart Of(FinishedJob job)
    {
        bool isGauge = job.Thing is CheckedThing.OfGauge;
        return new(
            job.Thing.Code,
            isGauge ? null : job.Thing.Name,
            job.Thing.Place?.Class.Name,
            job.Thing.Place?.Gate.Seat,
            job.Thing.Place?.Gate.Side.Word(),
            isGauge ? job.Thing.Name : null,
            job.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            job.FoundCode);
    }
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSerializable(typeof(ChancesDocument))]
internal sealed partial class ChancesJsonContext : JsonSerializerContext;
