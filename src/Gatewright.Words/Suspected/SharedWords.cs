using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.Suspected;

/// <summary>What all gates of a boat may share, so that none of them need be at fault.</summary>
public sealed class SharedWords
{
    /// <summary>From here on a wrong level is worth putting right before anything is mended.</summary>
    private const double WorthLevelling = 0.3;

    private readonly Wording _say;

    internal SharedWords(Wording say) => _say = say;

    /// <summary>The causes that a boat's gates share, where they are worth telling, most probable first.</summary>
    public IEnumerable<Likely> Of(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        IEnumerable<Likely> gauges = check.Readings.Readings.Select(r => r.Gauge.Name).Distinct().Select(gauge => new Likely(
            Gauge(gauge), check.Diagnosis.Probability(part => part.Cause == Cause.GaugeZero && part.Gauge == gauge)));
        return gauges.Prepend(new(_say.Text("Shared.Level"), LevelWrong(check)))
            .Where(cause => cause.Probability >= CauseChoice.WorthTelling)
            .OrderByDescending(cause => cause.Probability);
    }

    /// <summary>How the boat probably lay, where that may be the whole trouble; otherwise null.</summary>
    public string? HowItLay(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return LevelWrong(check) < WorthLevelling && !check.Diagnosis.Levels.Any(level => SharedFault.LiesElsewhere(level, check))
            ? null
            : _say.Text("Lay.LevelFirst", string.Join("; ", check.Diagnosis.Levels.Select(Lay)));
    }

    private static double LevelWrong(BoatCheck check) => check.Diagnosis.Probability(part => part.Cause == Cause.HullLevel);

    /// <summary>How a boat probably lay in one lying.</summary>
    internal string Lay(LevelDiagnosis level) => _say.Text(
        level.Lie.Lie == Lie.Upright ? "Lay.Upright" : "Lay.Inverted",
        Tilted(level.BowHigh, "Lay.BowHigh", "Lay.BowLow", "Lay.BowHighOrLow"),
        Tilted(level.PortLow, "Lay.PortLow", "Lay.StarboardLow", "Lay.PortOrStarboardLow"));

    /// <summary>Which way it lay; where that is too small to have a direction, within what it lay level.</summary>
    private string Tilted(Estimate tilt, string positive, string negative, string level) => CauseWords.IsEitherWay(tilt)
        ? _say.Text(level, _say.Figures.Degrees(tilt.U.Degrees))
        : _say.Causes.Directed(tilt, positive, negative, level);

    // A list that names no gauge may call its only one so: it has no name of its own.
    private string Gauge(string name) => name.Length == 0 || string.Equals(name, Core.Measuring.Gauge.Unnamed, StringComparison.OrdinalIgnoreCase) ? _say.Text("Shared.Gauge") : _say.Text("Shared.GaugeNamed", name);
}
