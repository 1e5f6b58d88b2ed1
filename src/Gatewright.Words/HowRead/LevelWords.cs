using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.HowRead;

/// <summary>How a boat was read: how it lay, how its level is known, and what that costs in certainty.</summary>
public sealed class LevelWords
{
    private readonly Wording _say;

    internal LevelWords(Wording say) => _say = say;

    /// <summary>"24 readings upright, bubble centred, 2026-03-14; told: a knock at seat 3 port".</summary>
    public string HowRead(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return string.Join("; ", check.Readings.Readings.GroupBy(r => r.Lie).Select(Lying).Concat(Reports(check)));
    }

    /// <summary>As it was found: "level read: 0.3° bow high, 0.2° port low", "bubble centred", "on rack A", "levelled by eye".</summary>
    public string Of(HullLevel level) => level switch
    {
        HullLevel.Read read => _say.Text("Level.Read", Bow(read.Attitude.BowHigh.Degrees), Port(read.Attitude.PortLow.Degrees)),
        HullLevel.BubbleCentred => _say.Text("Level.BubbleCentred"),
        HullLevel.OfRack rack => _say.Text("Level.Rack", rack.Rack.Name),
        _ => _say.Text("Level.ByEye"),
    };

    /// <summary>A way to come by the level, to be chosen from: "level read on the boat".</summary>
    public string Name(HullLevel level) => _say.Text($"LevelName.{Way(level)}");

    /// <summary>What a way costs: "The boat looked level, which leaves ± 0.7° each way; …".</summary>
    public string Cost(HullLevel level, MeasuringSettings settings) =>
        _say.Text($"LevelCost.{Way(level)}", _say.Figures.Brief(Math.Round(LevelEstimate.Of(level, settings).U.Degrees, 2)));

    /// <summary>
    /// Why a figure is not the one that was entered: "5.0° entered; 4.6° with the boat's level taken out"; null where both show
    /// alike, and where nothing is known to tell them apart.
    /// </summary>
    /// <param name="entered">What was entered, degrees.</param>
    /// <param name="shown">What is shown, degrees.</param>
    /// <param name="isLevelOut">Whether a level that is not 0 was taken out.</param>
    /// <param name="isZeroOut">Whether a gauge's zero that is not 0 was taken out.</param>
    /// <param name="readings">How many readings the figure is the mean of, 1 or more.</param>
    public string? Entered(double entered, double shown, bool isLevelOut, bool isZeroOut, int readings = 1)
    {
        string? mean = readings > 1 ? _say.Text("Entered.Mean", readings) : null;
        string? taken = (isLevelOut, isZeroOut) switch
        {
            (true, true) => _say.Text("Entered.LevelAndZero"),
            (true, false) => _say.Text("Entered.Level"),
            (false, true) => _say.Text("Entered.Zero"),
            _ => null,
        };
        string why = string.Join(", ", new[] { mean, taken }.OfType<string>());
        (string before, string after) = (_say.Figures.Degrees(entered), _say.Figures.Degrees(shown));
        return before == after || why.Length == 0 ? null : _say.Text("Entered.Is", before, after, why);
    }

    private static string Way(HullLevel level) => level switch
    {
        HullLevel.Read => "Read",
        HullLevel.BubbleCentred => "BubbleCentred",
        HullLevel.OfRack => "Rack",
        _ => "ByEye",
    };

    private string Lying(IGrouping<BoatLie, Reading> lying)
    {
        string read = _say.Counted("Read.Lying", lying.Count(), _say.Names.Lie(lying.Key.Lie), Of(lying.Key.Level));
        return lying.Key.Date is { } day ? _say.Text("Read.On", read, _say.Language.Day(day)) : read;
    }

    private IEnumerable<string> Reports(BoatCheck check) => check.Context.Reports.Count == 0
        ? []
        : [_say.Text("Report.Told", string.Join(", ", check.Context.Reports.Select(_say.Names.Report)))];

    private string Bow(double degrees) => _say.Text(degrees >= 0 ? "Tilt.BowHigh" : "Tilt.BowLow", Amount(degrees));

    private string Port(double degrees) => _say.Text(degrees >= 0 ? "Tilt.PortLow" : "Tilt.StarboardLow", Amount(degrees));

    private string Amount(double degrees) => _say.Figures.Degrees(Math.Abs(degrees));
}
