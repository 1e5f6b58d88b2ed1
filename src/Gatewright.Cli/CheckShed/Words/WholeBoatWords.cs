using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>What all gates of a boat may share, so that none of them need be at fault.</summary>
internal static class WholeBoatWords
{
    /// <summary>From here on a wrong level is worth putting right before anything is mended.</summary>
    private const double WorthLevelling = 0.3;

    /// <summary>The causes that a boat's gates share, where they are worth telling.</summary>
    public static IEnumerable<(string Words, double Probability)> Of(BoatCheck check)
    {
        var causes = new List<(string Words, double Probability)> { ("it did not lie as its level says", LevelWrong(check)) };
        foreach (string gauge in check.Readings.Readings.Select(r => r.Gauge.Name).Distinct())
        {
            causes.Add((
                $"{Gauge(gauge)} does not show 0 on a plumb face",
                check.Diagnosis.Probability(part => part.Cause == Cause.GaugeZero && part.Gauge == gauge)));
        }

        return causes.Where(cause => cause.Probability >= CauseWords.WorthTelling).OrderByDescending(cause => cause.Probability);
    }

    /// <summary>How the boat probably lay, where that may be the whole trouble; otherwise null.</summary>
    public static string? HowItLay(BoatCheck check) =>
        LevelWrong(check) < WorthLevelling && !check.Diagnosis.Levels.Any(level => SharedFault.LiesElsewhere(level, check))
            ? null
            : string.Join("; ", check.Diagnosis.Levels.Select(Lay))
                + ". Level it and read again before anything is mended: it may be no gate's fault.";

    /// <summary>Whether the whole boat, not a gate, is more likely the trouble than not.</summary>
    public static bool IsProbablyTheReading(BoatCheck check) => SharedFault.IsProbable(check);

    private static double LevelWrong(BoatCheck check) =>
        check.Diagnosis.Probability(part => part.Cause == Cause.HullLevel);

    private static string Lay(LevelDiagnosis level) =>
        $"Read {level.Lie.Lie.Word()}, it probably lay {CauseWords.Lean(level.BowHigh, "bow high", "bow low")} "
        + $"and {CauseWords.Lean(level.PortLow, "port low", "starboard low")}";

    private static string Gauge(string name) => name.Length == 0 ? "the gauge" : $"the gauge {name}";
}
