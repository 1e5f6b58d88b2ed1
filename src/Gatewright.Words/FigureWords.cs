using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Words;

/// <summary>Numbers as they are said. Angles are degrees.</summary>
public sealed class FigureWords
{
    /// <summary>The step in which degrees are shown.</summary>
    public const double ShownStep = 0.1;

    private readonly Language _language;

    internal FigureWords(Language language) => _language = language;

    /// <summary>"4.0", "-0.5"; never "-0.0".</summary>
    public string Degrees(double degrees, int decimals = 1) =>
        Fixed(Math.Round(degrees, decimals, MidpointRounding.AwayFromZero) + 0.0, decimals);

    /// <summary>So many decimals: "1.5".</summary>
    public string Fixed(double value, int decimals) =>
        value.ToString(decimals == 0 ? "0" : $"0.{new string('0', decimals)}", _language.Numbers);

    /// <summary>As few decimals as the value has, two at most: "3", "1.5".</summary>
    public string Brief(Angle angle) => Brief(angle.Degrees);

    /// <summary>As few decimals as the value has, two at most: "3", "1.5".</summary>
    public string Brief(double value) => value.ToString("0.##", _language.Numbers);

    /// <summary>A length as it is set: "60", "0.5" millimetres.</summary>
    public string Length(double mm) => mm.ToString("0.#", _language.Numbers);

    /// <summary>"4.0° ± 0.4", for a sentence.</summary>
    public string Loose(Estimate estimate) =>
        _language.Text("Figure.Loose", Degrees(estimate.Value.Degrees), Degrees(estimate.U.Degrees));

    /// <summary>"4.0 ± 0.4", where the unit has been said.</summary>
    public string Bare(Estimate estimate) =>
        _language.Text("Figure.Bare", Degrees(estimate.Value.Degrees), Degrees(estimate.U.Degrees));

    /// <summary>"71 %". Never 0 or 100: a probability from a model is not a certainty.</summary>
    public string Percent(double probability) =>
        probability > 0.99 ? _language.Text("Figure.Over", 99)
        : probability < 0.01 ? _language.Text("Figure.Under", 1)
        : _language.Text("Figure.Percent", (100 * probability).ToString("0", _language.Numbers));
}
