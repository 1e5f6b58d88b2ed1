using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>What is told of a boat as a whole.</summary>
internal static class BoatWords
{
    /// <summary>Of a boat of which only oars were read.</summary>
    public const string NoGate = "no gate was read";

    /// <summary>"24 readings upright, level read, 2026-03-14".</summary>
    public static string HowRead(BoatCheck check) =>
        string.Join("; ", check.Readings.Readings.GroupBy(r => r.Lie).Select(Lying).Concat(Told(check)));

    /// <summary>"catch 3.5 to 4.5, abeam 4.0, finish not read, expected 3.9 to 4.1; each to ± 0.4 at most", in degrees.</summary>
    public static string Spread(BoatVerdict boat)
    {
        IEnumerable<string> stations = Stations.All.Select(station => (station, spread: PitchSpread.At(boat, station)))
            .Select(s => s.spread.Read
                ? $"{s.station.Word()} {s.spread.Words}"
                : $"{s.station.Word()} not read, expected {s.spread.Words}")
            .Concat(PitchSpread.PartlyRead(boat));
        return $"{string.Join(", ", stations)}; each to ± {Figures.Degrees(PitchSpread.WidestU(boat))}° at most";
    }

    /// <summary>"seat 5, seat 7 port".</summary>
    public static string NotRead(BoatVerdict boat) => string.Join(", ", boat.NotRead);

    /// <summary>What no verdict shows and should be seen to all the same, a sentence each without its full stop.</summary>
    public static IEnumerable<string> Notices(BoatCheck check) =>
        Disagreements(check.Verdict).Concat(OarWords.SlippedSleeves(check)).Concat(LeftAside(check));

    /// <summary>Between the stations, where nothing is judged: at a station it is a reason of the gate's verdict.</summary>
    private static IEnumerable<string> Disagreements(BoatVerdict boat) =>
        from gate in boat.Gates
        from pitch in gate.Pitches
        where pitch.RepeatsDisagree && pitch.At.Station is null
        select $"{gate.Gate} {pitch.At.Phrase()}: {pitch.Repeats} readings differ by more than their uncertainty allows. "
            + "Read it again";

    private static IEnumerable<string> LeftAside(BoatCheck check) => check.Context.LeftAside == 0
        ? []
        : [string.Create(CultureInfo.InvariantCulture, $"{Figures.Count(check.Context.LeftAside, "older reading")} left aside: of each gate the last {check.Settings.DaysCombined} days it was read on count")];

    /// <summary>"told: knock at seat 3 port, down to port".</summary>
    private static IEnumerable<string> Told(BoatCheck check)
    {
        IEnumerable<string> told = check.Context.Reports.Select(report => report.Gate is { } gate
            ? $"{Words(report.Kind)} at {gate}"
            : $"{Words(report.Kind)} {report.Side?.Word()}");
        return check.Context.Reports.Count == 0 ? [] : ["told: " + string.Join(", ", told)];
    }

    private static string Words(ReportKind kind) => kind switch
    {
        ReportKind.Knock => "a knock",
        ReportKind.Refitted => "the rigger refitted",
        ReportKind.CrabEarly => "a crab early in the drive",
        ReportKind.CrabAtFinish => "a crab at the finish",
        ReportKind.WashesOut => "a blade that washes out",
        _ => "the boat down to",
    };

    private static string Lying(IGrouping<BoatLie, Reading> lying)
    {
        string date = lying.Key.Date is { } day
            ? ", " + day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
            : string.Empty;
        return $"{Figures.Count(lying.Count(), "reading")} {lying.Key.Lie.Word()}, {Level(lying.Key.Level)}{date}";
    }

    private static string Level(HullLevel level) => level switch
    {
        HullLevel.Read read => $"level read: {Tilt(read.Attitude.BowHigh.Degrees, "bow high", "bow low")}, "
            + Tilt(read.Attitude.PortLow.Degrees, "port low", "starboard low"),
        HullLevel.BubbleCentred => "bubble centred",
        HullLevel.OfRack rack => $"on rack {rack.Rack.Name}",
        _ => "levelled by eye",
    };

    private static string Tilt(double degrees, string positive, string negative) =>
        $"{Figures.Degrees(Math.Abs(degrees))}° {(degrees >= 0 ? positive : negative)}";
}
